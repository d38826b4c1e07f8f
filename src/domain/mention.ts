/** The platform's id of a person within a mention, "<@id>"; null where it is none. */
export const userIn = (mention: string | null): string | null => /^<@(.+)>$/.exec(mention ?? '')?.[1] ?? null
