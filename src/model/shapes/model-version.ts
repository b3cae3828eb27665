/** Goes up with every change that moves a figure, so that a written estimate says which model made it. */
export const MODEL_VERSION = '2.4.0';
