'use client'

import { useState, type DragEvent } from 'react'
import { countWords } from '../../../../lib/wording/list.ts'
import { LogCard, type Known } from './log-card.tsx'
import { readyToKeep } from './said-so-far.ts'
import { useLogFiles } from './use-log-files.ts'

interface Props {
  readonly project: string
  readonly known: Known
}

/** Files dropped or chosen, as many as one likes: each told first, kept when somebody says so. */
export function ImportLogs({ project, known }: Props) {
  const { files, take, drop, say, answer, keep } = useLogFiles(project)
  const [over, setOver] = useState(false)
  const ready = files.filter(
    ({ kept, read, busy }) => kept === null && read !== null && busy === null && readyToKeep(read),
  )
  const onDrop = (event: DragEvent) => {
    event.preventDefault()
    setOver(false)
    void take([...event.dataTransfer.files])
  }
  const keepReady = async () => {
    for (const { id, said } of ready) await keep(id, said)
  }
  return (
    <div className="stack">
      <div
        className="drop"
        data-over={over || undefined}
        onDragOver={(event) => {
          event.preventDefault()
          setOver(true)
        }}
        onDragLeave={() => setOver(false)}
        onDrop={onDrop}
      >
        <label htmlFor="files">
          <strong>Choose logger files</strong>, or drop them here
        </label>
        <input
          id="files"
          type="file"
          multiple
          onChange={(event) => {
            void take([...(event.target.files ?? [])])
            event.target.value = ''
          }}
        />
        <p className="soft small">Text, CSV or a workbook, from any logger, as it comes out of it.</p>
      </div>
      {ready.length > 1 && (
        <div>
          <button type="button" className="button first" onClick={() => void keepReady()}>
            {`Keep ${countWords(ready.length, 'file')} that leave nothing open`}
          </button>
        </div>
      )}
      {files.map((file) => (
        <LogCard
          key={file.id}
          file={file}
          known={known}
          onSaid={(said) => say(file.id, said)}
          onAnswer={(said) => void answer(file.id, said)}
          onKeep={(said) => void keep(file.id, said)}
          onDrop={() => drop(file.id)}
        />
      ))}
    </div>
  )
}
