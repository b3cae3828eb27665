/** A day of readings as bytes: 64-bit floating point, little-endian, so that what was read comes back to the last digit. */

export function toBlob(values: Float64Array): Uint8Array {
  return new Uint8Array(values.buffer, values.byteOffset, values.byteLength);
}

export function fromBlob(blob: Uint8Array): Float64Array {
  // The database hands out views at any offset; a copy starts at a multiple of eight.
  return new Float64Array(blob.slice().buffer);
}
