// The address of the engine's worker, given by the build.

declare module 'virtual:engine-worker' {
  const address: string;
  export default address;
}
