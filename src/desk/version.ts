/** Version of the application; a test holds it against package.json. */
export const VERSION = '0.1.0';
/** The day of that version; it is raised together with it. */
export const VERSION_DATE = '2026-11-28';
