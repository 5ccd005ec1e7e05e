export default function Loading() {
  return (
    <p role="status" className="soft">
      Reading the records and planning them for today …
    </p>
  )
}
