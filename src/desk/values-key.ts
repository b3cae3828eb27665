/** The Ed25519 key (SPKI, base64) that newer prices and reference values are signed with; its other half is in no repository. */
export const VALUES_KEY = 'MCowBQYDK2VwAyEAzAJJsT2zKyYukEcphu72ySozHLmIIrlnAV8k/FBxK4o=';
