import Link from 'next/link'
import { personHere } from '../_server/person.ts'
import { whoWords } from '../../lib/wording/marks.ts'
import { Places } from './places.tsx'
import style from './frame.module.css'

export async function Header() {
  const person = await personHere()
  return (
    <header className={`${style.header} no-print`}>
      <a className={style.skip} href="#content">
        Skip to the page
      </a>
      <Link className={style.name} href="/">
        <svg viewBox="0 0 24 12" aria-hidden="true" focusable="false">
          <path
            d="M0 11.25H24M3 11V7M8 11V2M13 11V7M18 11V7M23 11V7"
            stroke="currentColor"
            strokeWidth="1.5"
            fill="none"
          />
        </svg>
        Quietmetal
      </Link>
      <Places />
      <Link className={style.person} href="/person">
        {person === null ? 'Say who you are' : `${person.name}, ${whoWords[person.role]} (unverified)`}
      </Link>
    </header>
  )
}
