interface Props {
  readonly id: string
}

/** Fills that tell areas apart without colour. */
export function Hatches({ id }: Props) {
  return (
    <defs>
      <pattern
        id={`${id}-blind`}
        width="8"
        height="8"
        patternUnits="userSpaceOnUse"
        patternTransform="rotate(45)"
      >
        <rect width="8" height="8" fill="var(--paper)" />
        <rect width="1.6" height="8" fill="var(--line-strong)" />
      </pattern>
      <pattern
        id={`${id}-wide`}
        width="6"
        height="6"
        patternUnits="userSpaceOnUse"
        patternTransform="rotate(45)"
      >
        <rect width="1.2" height="6" fill="var(--chart-ink)" />
      </pattern>
      <pattern id={`${id}-window`} width="7" height="7" patternUnits="userSpaceOnUse">
        <rect width="7" height="7" fill="var(--paper)" />
        <circle cx="2" cy="2" r="1.1" fill="var(--rust)" />
      </pattern>
    </defs>
  )
}
