'use client'

import { useState, type Ref } from 'react'
import { tableOf } from '../../lib/papers/store-chart-table.ts'
import type { ChartGround, ChartView } from '../../lib/papers/store-chart.ts'
import { Scroll } from '../_frame/scroll.tsx'
import style from './chart.module.css'

interface Props {
  readonly ref: Ref<HTMLDetailsElement>
  readonly name: string
  readonly view: ChartView
  readonly ground: ChartGround
}

/** The table behind the chart: the stretches of the view, joined to as many lines as a person reads. */
export function LoggerTable({ ref, name, view, ground }: Props) {
  const [open, setOpen] = useState(false)
  return (
    <details ref={ref} className={style.behind} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>The same as a table</summary>
      {open && (
        <Scroll name={`Readings of ${name}, table`}>
          <table>
            <thead>
              <tr>
                <th scope="col">From</th>
                <th scope="col">Relative humidity</th>
                <th scope="col">Temperature</th>
              </tr>
            </thead>
            <tbody>
              {tableOf(view, ground).map(({ atMs, from, humidity, temperature }) => (
                <tr key={atMs}>
                  <th scope="row">{from}</th>
                  <td>{humidity}</td>
                  <td>{temperature}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </Scroll>
      )}
    </details>
  )
}
