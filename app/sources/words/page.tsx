import type { Metadata } from 'next'
import { Scroll } from '../../_frame/scroll.tsx'
import { knowledgeHere } from '../../_server/services.ts'
import { Back } from '../back.tsx'

export const metadata: Metadata = { title: 'Words of the record' }

export default async function Words() {
  const { vocabulary } = await knowledgeHere()
  return (
    <>
      <header className="head">
        <Back to="/sources" name="Sources" />
        <h1>Words of the record</h1>
        <p className="lead">
          What each word means and how to tell it. What is seen is recorded; what it means is decided later.
        </p>
      </header>
      {Object.values(vocabulary.fields).map((field) => (
        <section key={field.id} id={field.id} className="section" aria-labelledby={`${field.id}-name`}>
          <h2 id={`${field.id}-name`}>{field.label}</h2>
          <p className="measure">{[field.means, field.tell].filter((text) => text !== '').join(' ')}</p>
          {field.values.length > 0 && (
            <Scroll name={`${field.label}, table`}>
              <table>
                <thead>
                  <tr>
                    <th scope="col">Word</th>
                    <th scope="col">Means</th>
                    <th scope="col">How to tell</th>
                  </tr>
                </thead>
                <tbody>
                  {field.values.map((value) => (
                    <tr key={value.id} id={`${field.id}-${value.id}`}>
                      <th scope="row">
                        {value.label} <code className="soft small">{value.id}</code>
                      </th>
                      <td>{value.means}</td>
                      <td>{value.tell}</td>
                    </tr>
                  ))}
                </tbody>
              </table>
            </Scroll>
          )}
        </section>
      ))}
    </>
  )
}
