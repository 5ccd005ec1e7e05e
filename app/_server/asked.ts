/** What an address asks for, one text a name; repeated and empty ones are left out. */
export type SearchParams = Promise<Readonly<Record<string, string | readonly string[] | undefined>>>

export async function asked(params: SearchParams): Promise<Readonly<Record<string, string>>> {
  const entries = Object.entries(await params).flatMap(([name, value]) =>
    typeof value === 'string' && value.trim() !== '' ? [[name, value.trim()] as const] : [],
  )
  return Object.fromEntries(entries)
}
