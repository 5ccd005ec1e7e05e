'use client'

/** The last resort, where not even the frame of the page could be drawn: no styles, no data, plain words. */
export default function GlobalFault() {
  return (
    <html lang="en-GB">
      <body style={{ fontFamily: 'Verdana, sans-serif', margin: '2rem', maxWidth: '40rem', lineHeight: 1.5 }}>
        <title>Error · Quietmetal</title>
        <main>
          <h1>This page could not be made</h1>
          <p>
            The fault is ours. What was kept before is still kept, and what you typed in Intake is on this
            device. If the tool was just updated, loading the page again is enough.
          </p>
          <button
            type="button"
            onClick={() => window.location.reload()}
            style={{ minHeight: 44, padding: '0 1rem', font: 'inherit' }}
          >
            Try again
          </button>
        </main>
      </body>
    </html>
  )
}
