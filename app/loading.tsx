export default function Loading() {
  return (
    <p role="status" className="soft">
      One moment: reading what is kept …
    </p>
  )
}
