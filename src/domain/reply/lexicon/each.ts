/** Every head with every tail, both parted by "/", as phrases parted by commas. */
export const each = (heads: string, tails: string): string =>
  heads
    .split('/')
    .flatMap((head) => tails.split('/').map((tail) => `${head} ${tail}`))
    .join(', ')
