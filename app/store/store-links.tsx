import Link from 'next/link'
import style from './store.module.css'

const links = [
  { href: '/store/walk', label: 'Walk the shelves' },
  { href: '/store/renewals', label: 'Gel to renew' },
  { href: '/store/loggers/import', label: 'Bring in logger files' },
  { href: '/store/loggers', label: 'Loggers' },
  { href: '/store/air', label: 'Air' },
  { href: '/store/pack', label: 'Pack the store' },
  { href: '/store/what-if', label: 'What if' },
  { href: '/store/report', label: 'The year' },
  { href: '/store/climate', label: 'Questions about humidity' },
  { href: '/store/flood', label: 'Water came in' },
  { href: '/store/rooms', label: 'Rooms' },
  { href: '/store/tables', label: 'Tables in and out' },
  { href: '/sheets/box-labels', label: 'Box labels' },
  { href: '/sheets/salvage', label: 'Salvage list' },
] as const

/** As many are done every week; the rest now and then. */
const often = 3

/** What is done in a store, what is done most first. */
export function StoreLinks() {
  return (
    <nav aria-label="Work in the store" className="no-print">
      <ul className={style.links}>
        {links.map(({ href, label }, at) => (
          <li key={href}>
            <Link className={at === 0 ? 'button first' : at < often ? 'button' : 'tall'} href={href}>
              {label}
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  )
}
