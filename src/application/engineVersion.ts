/**
 * The package's version, and that of the measuring engine in it: the latter is raised whenever the same photographs could give
 * other numbers.
 */
export const engineVersion = 'stonetone 0.1.0, engine 4';
