import style from './invented.module.css'

/** Marks what was made up for trying the tool out; it prints too. */
export function Invented({ quiet = false }: { readonly quiet?: boolean }) {
  return <span className={quiet ? style.quiet : style.mark}>invented</span>
}
