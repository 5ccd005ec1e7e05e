import Link from 'next/link'
import { chooseTheme } from './actions.ts'
import { themeHere, themes, type Theme } from '../_server/theme.ts'
import style from './frame.module.css'

const themeWords: Readonly<Record<Theme, string>> = {
  device: 'As the device',
  paper: 'Paper',
  graphite: 'Graphite',
}

const more = [
  { href: '/import', label: 'Import a file' },
  { href: '/contacts', label: 'Who to call' },
  { href: '/sheets/bag', label: 'Bag sheet' },
  { href: '/sheets/supplies', label: 'Supplies list' },
  { href: '/sheets/hand-over', label: 'Hand-over sheet' },
] as const

export async function Footer() {
  const chosen = await themeHere()
  return (
    <footer className={`${style.footer} no-print`}>
      <ul className={style.more}>
        {more.map(({ href, label }) => (
          <li key={href}>
            <Link href={href}>{label}</Link>
          </li>
        ))}
      </ul>
      <form action={chooseTheme} className={style.theme}>
        <span id="theme-label">Colours</span>
        <div role="group" aria-labelledby="theme-label">
          {themes.map((theme) => (
            <button key={theme} name="theme" value={theme} aria-pressed={theme === chosen}>
              {themeWords[theme]}
            </button>
          ))}
        </div>
      </form>
      <p>It advises on keeping, recording, ordering and asking. It never instructs a treatment.</p>
    </footer>
  )
}
