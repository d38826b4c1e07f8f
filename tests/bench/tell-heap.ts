/** Asked by a signal, a process collects its garbage and says how much is left in use. */
export function tellHeap(): void {
  process.on('SIGUSR2', () => {
    global.gc!()
    console.log(`heap: ${process.memoryUsage().heapUsed / 1e6} MB`)
  })
}
