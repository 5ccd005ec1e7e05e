import Link from 'next/link'
import style from './report.module.css'

/** Every year of which anything is kept. */
export function Years({ years, year }: { readonly years: readonly number[]; readonly year: number }) {
  if (years.length < 2 && years[0] === year) return null
  return (
    <nav aria-label="Year">
      <ul className={style.years}>
        {years.map((one) => (
          <li key={one}>
            <Link
              className="tall"
              href={`/store/report?year=${one}`}
              aria-current={one === year ? 'page' : undefined}
            >
              {one}
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  )
}
