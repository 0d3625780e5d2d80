declare module 'heic-decode' {
  function decode(input: {
    buffer: Uint8Array;
  }): Promise<{ width: number; height: number; data: Uint8ClampedArray }>;
  export default decode;
}
