/** The largest photograph that is taken in, bytes. */
export const uploadLimitBytes = 100e6;
/** The largest JSON body, bytes: 500 zones of 2,000 points each would be refused, all sensible ones fit. */
export const jsonLimitBytes = 4e6;
/** How long a request may take to arrive, ms. */
export const requestTimeoutMs = 300_000;
/** How long the head of a request, or the first byte of a connection, may take, ms. */
export const headTimeoutMs = 10_000;
/**
 * A connection that was asked on before is kept so long for the next question, ms: longer than browsers keep one that lies
 * idle (some minutes, 300 s at most; from memory), so that it is let go by who asks. Where the server lets go first, a tap
 * that is sent in that moment is lost on the way and has to be sent again on another connection.
 */
export const keptConnectionMs = 330_000;
/**
 * A connection on which nothing moves either way for so long is let go, ms: longer than any answer takes to be made, and
 * far longer than a page's stream of events is ever silent.
 */
export const idleTimeoutMs = 600_000;
/** How many pages may listen to the event stream at once. */
export const eventListenersAllowed = 200;
