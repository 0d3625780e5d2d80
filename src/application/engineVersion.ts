/** Name and version of the measuring engine: raised whenever the same photographs could give other numbers. */
export const engineVersion = 'stonetone 0.1.0';
