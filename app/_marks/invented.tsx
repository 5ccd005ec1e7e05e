import style from './invented.module.css'

/** Marks what was made up for trying the tool out; it prints too. */
export function Invented() {
  return <span className={style.mark}>invented</span>
}
