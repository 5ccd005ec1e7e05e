'use client'

import { useId, useLayoutEffect, useRef, useState, type CSSProperties, type KeyboardEvent } from 'react'
import { createPortal } from 'react-dom'
import type { Word } from '../../../lib/knowledge/knowledge.ts'
import { acceptOption, isBegun, optionsFor } from './options.ts'
import style from './grid.module.css'

interface Props {
  readonly label: string
  readonly text: string
  readonly words: readonly Word[]
  readonly several: boolean
  readonly onType: (text: string) => void
  readonly onLeave: () => void
}

/** The input of the active cell. Words of the field are offered; none is taken that was not chosen. */
export function CellEditor({ label, text, words, several, onType, onLeave }: Props) {
  const id = useId()
  const input = useRef<HTMLInputElement>(null)
  const [chosen, choose] = useState(-1)
  const [open, setOpen] = useState(true)
  const options = open ? optionsFor(text, words, several) : []
  const offers = options.length > 0
  const [place, setPlace] = useState<CSSProperties>({})

  useLayoutEffect(() => {
    const field = input.current
    field?.focus()
    field?.setSelectionRange(field.value.length, field.value.length)
  }, [])

  useLayoutEffect(() => {
    if (offers && input.current !== null) setPlace(below(input.current))
  }, [offers])

  const take = (at: number) => {
    const option = options[at]
    if (option === undefined) return
    onType(acceptOption(text, option.id, several))
    choose(-1)
    setOpen(isBegun(option.id))
  }

  const onKeyDown = (event: KeyboardEvent) => {
    if (event.nativeEvent.isComposing) return
    const last = options.length - 1
    if (event.key === 'ArrowDown' && last >= 0) {
      choose(Math.min(chosen + 1, last))
      keep(event)
    } else if (event.key === 'ArrowUp' && chosen >= 0) {
      choose(chosen - 1)
      keep(event)
    } else if (event.key === 'Escape' && last >= 0 && chosen >= 0) {
      choose(-1)
      keep(event)
    } else if (event.key === 'Enter' && chosen >= 0 && several) {
      take(chosen)
      keep(event)
    } else if ((event.key === 'Enter' || event.key === 'Tab') && chosen >= 0) {
      // Taken, and the key goes on to the grid, which keeps the cell and moves.
      take(chosen)
    }
  }

  return (
    <>
      <input
        ref={input}
        className={style.editor}
        role="combobox"
        aria-label={label}
        aria-expanded={offers}
        aria-controls={`${id}-words`}
        aria-activedescendant={chosen >= 0 ? `${id}-${chosen}` : undefined}
        aria-autocomplete="list"
        autoComplete="off"
        spellCheck={false}
        value={text}
        onChange={(event) => {
          choose(-1)
          setOpen(true)
          onType(event.target.value)
        }}
        onKeyDown={onKeyDown}
        onBlur={onLeave}
      />
      {offers &&
        createPortal(
          <ul id={`${id}-words`} role="listbox" aria-label={label} className={style.words} style={place}>
            {options.map((option, at) => (
              <li
                key={option.id}
                id={`${id}-${at}`}
                role="option"
                aria-selected={at === chosen}
                ref={at === chosen ? scrollHere : undefined}
                onPointerDown={(event) => {
                  event.preventDefault()
                  take(at)
                }}
              >
                <strong>{option.label}</strong>
                {option.tell !== '' && <span>{option.tell}</span>}
              </li>
            ))}
          </ul>,
          // Inside the page's own landmark, or who goes by landmarks would not come by it.
          document.getElementById('content') ?? document.body,
        )}
    </>
  )
}

function keep(event: KeyboardEvent) {
  event.preventDefault()
  event.stopPropagation()
}

function scrollHere(option: HTMLLIElement | null) {
  option?.scrollIntoView?.({ block: 'nearest' })
}

/** Under the cell, or above it where the window ends too soon. */
function below(input: HTMLInputElement): CSSProperties {
  const box = input.getBoundingClientRect()
  const left = Math.max(8, Math.min(box.left, window.innerWidth - 348))
  const room = window.innerHeight - box.bottom
  return room > 240
    ? { left, top: box.bottom + 2, maxHeight: room - 12 }
    : { left, bottom: window.innerHeight - box.top + 2, maxHeight: box.top - 12 }
}
