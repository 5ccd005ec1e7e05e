'use client'

import Link from 'next/link'
import { usePathname } from 'next/navigation'
import style from './frame.module.css'

const places = [
  { href: '/intake', label: 'Intake' },
  { href: '/finds', label: 'Finds' },
  { href: '/bench', label: 'Bench' },
  { href: '/store', label: 'Store' },
  { href: '/sources', label: 'Sources' },
] as const

export function Places() {
  const path = usePathname()
  return (
    <nav className={style.places} aria-label="Places">
      <ul>
        {places.map(({ href, label }) => (
          <li key={href}>
            <Link
              href={href}
              aria-current={path === href ? 'page' : path.startsWith(`${href}/`) ? 'true' : undefined}
            >
              {label}
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  )
}
