/** The largest photograph that is taken in, bytes. */
export const uploadLimitBytes = 100e6;
/** The largest JSON body, bytes: 500 zones of 2,000 points each would be refused, all sensible ones fit. */
export const jsonLimitBytes = 4e6;
/** How long a request may take to arrive, ms. */
export const requestTimeoutMs = 300_000;
/** How many pages may listen to the event stream at once. */
export const eventListenersAllowed = 200;
