import type { Metadata } from 'next'
import Link from 'next/link'
import { airLead, placeOfCouponWords } from '../../../lib/wording/air-entry.ts'
import { outdoorsOnly } from '../../../lib/wording/air-how.ts'
import { NoProject } from '../../_finds/no-project.tsx'
import { Invented } from '../../_marks/invented.tsx'
import { personHere } from '../../_server/person.ts'
import { projectsHere } from '../../_server/project.ts'
import { orElsewhere, servicesHere } from '../../_server/services.ts'
import { Ask } from '../_forms/ask.tsx'
import { AskForm } from '../_forms/ask-form.tsx'
import { Cautions } from '../_forms/cautions.tsx'
import { keepNewCoupon } from './act.ts'
import { Coupon } from './coupon.tsx'
import { couponQuestions } from './coupon-questions.ts'
import { How } from './how.tsx'
import { Limits } from './limits.tsx'
import { Meaning } from './meaning.tsx'
import { OutdoorsForm } from './outdoors-form.tsx'

export const metadata: Metadata = { title: 'Air' }

export default async function AirPage() {
  const { chosen } = await projectsHere()
  if (chosen === null)
    return (
      <>
        <h1>Air</h1>
        <NoProject shows="Metal coupons stand here that tell what the air of the store does to bare metal." />
      </>
    )
  const services = await servicesHere()
  const { knowledge } = services
  const person = await personHere()
  const air = await orElsewhere(services.showAir(chosen.id))
  const coupons = air.rooms.flatMap(({ places }) => places.flatMap((place) => place.coupons))
  const how = 'How a coupon is hung and weighed'
  return (
    <>
      <header className="head">
        <h1>Air</h1>
        <p className="lead">{airLead(coupons.length, air.rooms.length)}</p>
        <p className="soft">
          {chosen.name} {chosen.invented && <Invented />}
        </p>
      </header>
      {air.rooms.map(({ room, places }) => (
        <section key={room} className="section" aria-label={room === '' ? 'No room' : room}>
          <h2>{room === '' ? 'No room' : room}</h2>
          {places.map(({ box, coupons: own }) => (
            <div key={box ?? ''} className="stack">
              <h3>{placeOfCouponWords(box)}</h3>
              {own.map((shown) => (
                <Coupon key={shown.entry.id} shown={shown} knowledge={knowledge} />
              ))}
            </div>
          ))}
        </section>
      ))}
      {coupons.length === 0 && (
        <section className="section" aria-labelledby="how">
          <h2 id="how">{how}</h2>
          <How />
        </section>
      )}
      <section className="section" aria-labelledby="more">
        <h2 id="more">What did you do?</h2>
        {person === null && (
          <p>
            <Link href="/person?back=/store/air">Say who you are</Link> first: every entry carries who made
            it.
          </p>
        )}
        <Ask says="I weighed a coupon">
          <AskForm
            id="coupon"
            action={keepNewCoupon}
            questions={couponQuestions(
              air.places,
              air.today,
              knowledge.figures['coupon-weighing-error']?.value ?? 0,
            )}
            hidden={{ project: chosen.id }}
            submit="Keep the coupon"
          />
          <Cautions knowledge={knowledge} task="hang-coupon" />
        </Ask>
        {coupons.length > 0 && (
          <Ask says={how}>
            <How />
          </Ask>
        )}
      </section>
      <Meaning meaning={air.meaning} knowledge={knowledge} />
      <Limits limits={air.limits} knowledge={knowledge} />
      <section className="section no-print" aria-labelledby="outdoors">
        <h2 id="outdoors">Out of doors</h2>
        <p className="measure">
          <strong>{outdoorsOnly}</strong>
        </p>
        <OutdoorsForm />
      </section>
    </>
  )
}
