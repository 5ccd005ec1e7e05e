/** How a specialist corrects these tables: take the table along, change words, give it back to be checked. */
export function Correct({ matter }: { readonly matter: string }) {
  return (
    <section className="section no-print" aria-labelledby="correct">
      <h2 id="correct">Correct this</h2>
      <ol className="stack measure">
        <li>
          <p>Take the table along. It opens in any spreadsheet, with one row for each word.</p>
          <p>
            <a className="button" href={`/sources/evidence/${matter}/table`} download={`${matter}.csv`}>
              Download the table
            </a>
          </p>
        </li>
        <li>
          In the rows that are wrong, change <em>grade</em>, and say in <em>because</em>, <em>by</em> and{' '}
          <em>on</em> why, who says so and on which day. Name the work in <em>work</em> and <em>place</em>, or{' '}
          <code>common-practice</code>.
        </li>
        <li>
          <p>Give the file to whoever looks after this copy of the tool, who takes it in:</p>
          <p>
            <code>{`npm run -s quietmetal -- knowledge correct ${matter}.csv`}</code>
          </p>
        </li>
      </ol>
      <p className="measure soft">
        Every row is checked first, and with anything wrong nothing is written. What is taken in changes the
        version of the knowledge; plans issued before keep theirs.
      </p>
    </section>
  )
}
