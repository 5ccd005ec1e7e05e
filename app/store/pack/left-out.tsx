import Link from 'next/link'
import type { StorePacking } from '../../../lib/services/pack-store.ts'
import { countWords } from '../../../lib/wording/list.ts'
import { nowhereHeadings, nowhereWords, staysWords } from '../../../lib/wording/packing-plan.ts'
import { Invented } from '../../_marks/invented.tsx'
import style from './pack.module.css'

const mostOfEach = 60

/** Finds for which there is no box, under their reason, each with its own figures. */
export function NoBox({ packing }: { readonly packing: StorePacking }) {
  const { nowhere } = packing.proposal
  if (nowhere.length === 0) return null
  const byReason = Map.groupBy(nowhere, ({ why }) => why[0]!.code)
  return (
    <section className="section" aria-labelledby="nowhere">
      <h2 id="nowhere">{`No box for ${countWords(nowhere.length, 'find')}`}</h2>
      {[...byReason].map(([code, group]) => (
        <div key={code} className={style.group}>
          <h3>{`${nowhereHeadings[code]} (${group.length})`}</h3>
          <ul className={style.moves}>
            {group.slice(0, mostOfEach).map(({ findId, still, why }) => (
              <li key={findId} className={style.left}>
                <FindName packing={packing} findId={findId} />
                <span>
                  {why.map(nowhereWords).join(' ')}
                  {still !== null && ` It lies on in ${still}, and nothing is put beside it.`}
                </span>
              </li>
            ))}
          </ul>
          {group.length > mostOfEach && <p className="soft">{`and ${group.length - mostOfEach} more`}</p>}
        </div>
      ))}
    </section>
  )
}

/** Finds that stay whatever else moves, box by box: above all where nobody opens the box. */
export function Staying({ packing }: { readonly packing: StorePacking }) {
  const { stays } = packing.proposal
  if (stays.length === 0) return null
  const byReason = Map.groupBy(stays, ({ why }) => why)
  const order = ['stopped', 'beside-a-stop', 'no-one-band', 'well-there'] as const
  return (
    <section className="section" aria-labelledby="stays">
      <h2 id="stays">{`${countWords(stays.length, 'find')} left where they are`}</h2>
      {order.map((why) => {
        const group = byReason.get(why) ?? []
        if (group.length === 0) return null
        return (
          <div key={why} className={style.group}>
            <h3>{`${staysWords[why]} (${group.length})`}</h3>
            <ul className={style.stays}>
              {[...Map.groupBy(group, ({ box }) => box)].map(([box, own]) => (
                <li key={box}>
                  <strong>{box}</strong>
                  {': '}
                  {why === 'stopped' || own.length <= mostOfEach
                    ? own.map(({ findId }, at) => (
                        <span key={findId}>
                          {at > 0 && ', '}
                          <Link href={`/finds/${findId}`}>
                            {packing.finds.get(findId)?.line.findNumber ?? findId}
                          </Link>
                        </span>
                      ))
                    : countWords(own.length, 'find')}
                </li>
              ))}
            </ul>
          </div>
        )
      })}
    </section>
  )
}

/** Finds that are away. */
export function Away({ packing: { out } }: { readonly packing: StorePacking }) {
  if (out.length === 0) return null
  return (
    <p className="measure">
      {`${countWords(out.length, 'find')} out of the store and not packed here: `}
      {out.map(({ findId, line }, at) => (
        <span key={findId}>
          {at > 0 && ', '}
          <Link href={`/finds/${findId}`}>{line.findNumber}</Link>
        </span>
      ))}
      .
    </p>
  )
}

function FindName({ packing, findId }: { readonly packing: StorePacking; readonly findId: string }) {
  const find = packing.finds.get(findId)
  return (
    <span>
      <Link className="tall" href={`/finds/${findId}`}>
        <strong>{find?.line.findNumber ?? findId}</strong>
        {` ${find?.line.object ?? ''}`}
      </Link>{' '}
      {packing.project.invented && <Invented quiet />}
    </span>
  )
}
