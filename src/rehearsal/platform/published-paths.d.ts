// The package's own types do not compile under our settings (tsconfig points here): the little that we use of them.
type Verb = 'get' | 'put' | 'post' | 'patch' | 'delete'
export const pathsList: Readonly<Record<Verb, readonly string[]>>
