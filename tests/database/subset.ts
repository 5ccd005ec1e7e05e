/**
 * What no statement may hold, so that the same code runs on SQLite, PostgreSQL and the distributed engines that speak
 * PostgreSQL. Each with a statement that it must catch.
 */
export const banned: readonly {
  readonly what: string
  readonly pattern: RegExp
  readonly example: string
}[] = [
  {
    what: 'trigger',
    pattern: /\btrigger\b/,
    example: 'create trigger t after insert on find begin select 1; end',
  },
  {
    what: 'stored procedure',
    pattern: /\b(procedure|function|language)\b/,
    example: 'create function f() returns int language sql',
  },
  { what: 'notification', pattern: /^\s*(un)?(listen|notify)\b/, example: 'listen changes' },
  { what: 'temporary table', pattern: /\btemp(orary)?\b/, example: 'create temp table t (id text)' },
  {
    what: 'sequence',
    pattern: /\b(sequence|serial|bigserial|autoincrement|identity|nextval)\b/,
    example: 'create table t (id serial)',
  },
  { what: 'array', pattern: /\barray\b|\bany\s*\(|\[\]/, example: 'select * from find where id = any($1)' },
  { what: 'enum or domain', pattern: /\bcreate\s+(type|domain)\b/, example: "create type t as enum ('a')" },
  {
    what: 'generated column',
    pattern: /\bgenerated\b/,
    example: 'create table t (a text generated always as (b) stored)',
  },
  {
    what: 'deferrable constraint',
    pattern: /\bdeferr(able|ed)\b/,
    example: 'alter table t add constraint c check (a) deferrable',
  },
  {
    what: 'writing common table',
    pattern: /\bwith\b.*\b(insert into|update|delete from)\b/,
    example: 'with w as (select 1) update find set a = 1',
  },
  { what: 'savepoint', pattern: /\b(savepoint|release)\b/, example: 'savepoint one' },
  { what: 'advisory lock', pattern: /advisory/, example: 'select pg_advisory_lock(1)' },
  {
    what: 'row lock',
    pattern: /\bfor\s+(update|share|no key|key)\b|\bskip locked\b/,
    example: 'select * from find for update skip locked',
  },
  { what: 'truncate', pattern: /\btruncate\b/, example: 'truncate find' },
  {
    what: 'insert or replace',
    pattern: /\binsert\s+or\b|\breplace\s+into\b/,
    example: 'insert or replace into find values (1)',
  },
  {
    what: 'named constraint in a conflict',
    pattern: /\bon\s+constraint\b/,
    example: 'insert into t values (1) on conflict on constraint c do nothing',
  },
  {
    what: 'expression in a conflict',
    pattern: /\bon conflict\s*\([^)]*[(+|]/,
    example: 'insert into t values (1) on conflict (lower(a)) do nothing',
  },
  {
    what: 'delete using',
    pattern: /\bdelete\b.*\busing\b/,
    example: 'delete from t using u where t.id = u.id',
  },
  {
    what: 'range window',
    pattern: /\brange\s+(between|unbounded|interval|\d)/,
    example: 'select sum(a) over (order by b range between 1 preceding and current row)',
  },
  {
    what: 'JSON in SQL',
    pattern: /\bjsonb?\b|\bjsonb?_|->|@>/,
    example: "select plan ->> 'urgency' from plan",
  },
  {
    what: 'date in SQL',
    pattern:
      /\b(now|strftime|datetime|julianday|date_trunc|to_char|extract|age)\s*\(|\bcurrent_(date|time|timestamp)\b|\binterval\b/,
    example: 'select current_timestamp',
  },
  { what: 'cast of one engine', pattern: /::/, example: "select '1'::int" },
  {
    what: 'matching of one engine',
    pattern: /\bilike\b|\bregexp\b|\bglob\b|\bsimilar to\b|~/,
    example: "select * from find where a ilike 'b'",
  },
  { what: 'distinct on', pattern: /\bdistinct\s+on\b/, example: 'select distinct on (a) a from t' },
  { what: 'lateral', pattern: /\blateral\b/, example: 'select * from a, lateral (select 1) b' },
  { what: 'collation', pattern: /\bcollate\b/, example: 'select * from find order by a collate nocase' },
  {
    what: 'order of empty values',
    pattern: /\bnulls\s+(first|last)\b/,
    example: 'select * from find order by a nulls last',
  },
  {
    what: 'setting of one engine',
    pattern: /\bpragma\b|\bset\s+local\b|\bvacuum\b/,
    example: 'pragma foreign_keys',
  },
]

/** Why a statement lies outside the subset, or null. Quoted names and text are left out: a column may be called anything. */
export function outsideSubset(sql: string): string | null {
  const bare = sql
    .toLowerCase()
    .replace(/"[^"]*"/g, 'name')
    .replace(/'[^']*'/g, 'text')
    .replace(/\s+/g, ' ')
  const alien = banned.find(({ pattern }) => pattern.test(bare))
  if (alien) return alien.what
  // One statement creates one thing: engines without transactions over tables stop between them.
  return bare.replace(/;\s*$/, '').includes(';') ? 'several statements in one' : null
}
