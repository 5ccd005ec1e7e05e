import style from './paper.module.css'

/** Both sides sign on paper: who gave, who took, when, and what was found otherwise than listed. */
export function SignBoxes({ giver }: { readonly giver: string }) {
  return (
    <div className={style.sign}>
      <Side legend="Handed over by" name={giver} />
      <Side legend="Received by" name="" />
    </div>
  )
}

function Side({ legend, name }: { readonly legend: string; readonly name: string }) {
  return (
    <fieldset>
      <legend>{legend}</legend>
      <dl>
        <div>
          <dt>Name</dt>
          <dd>{name}</dd>
        </div>
        {['Role', 'Day, hour', 'Differs from list', 'Signature'].map((line) => (
          <div key={line}>
            <dt>{line}</dt>
            <dd />
          </div>
        ))}
      </dl>
    </fieldset>
  )
}
