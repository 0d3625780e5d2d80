/** Name and version of the measuring engine: raised whenever the same photographs could give other numbers. */
export const engineVersion = 'stonetone engine 2';
