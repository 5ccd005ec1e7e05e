/** How a coupon is hung and weighed, as the trade does it: nobody printed it for us in these words. */
export const couponSteps: readonly { readonly what: string; readonly why: string }[] = [
  {
    what: 'Take a small plate of clean, bare metal with a hole at one end and a number scratched into it.',
    why: 'Silver and copper see sulphur, copper and lead see acid vapours, steel sees damp. The larger the plate, the better the balance sees what became of it.',
  },
  {
    what: 'Free it of grease, dry it, and from then on touch it only with tweezers or clean gloves.',
    why: 'A finger weighs more than a year of clean air does.',
  },
  {
    what: 'Measure all its faces and add them up; weigh it twice, on a balance that shows a tenth of a milligram or less, and write both down.',
    why: 'How far two weighings lie apart is how far the balance errs.',
  },
  {
    what: 'Hang it on nylon where the finds lie, in the room or in the box, touching nothing, out of sun and dust.',
    why: 'It must have the air that the finds have. In a box of gel it tells of the box, not of the room.',
  },
  {
    what: 'Weigh a second plate with it that stays closed away dry and clean.',
    why: 'What that one changes is the balance, not the air.',
  },
  {
    what: 'Leave it for a year, take it down without touching it, and weigh it as it is: that is the gain.',
    why: 'Metals mostly corrode faster at first, and the classes are for a year. Weighing the loss needs the corrosion taken off, which a laboratory does.',
  },
]

export const noMeaning =
  'A class tells how the air treats clean metal. We know of no published rule that makes of it a limit for finds, and make none up: metal with salts in it can corrode in air that a coupon finds mild, and no coupon sees a damp box between two visits. What is published about each metal stands below; what a find needs stands in its own plan.'

export const leadUnknown =
  'Limits for lead stand in the standard since 2020. We do not know them, so no coupon of lead gets a class here. It is kept all the same, and read against what is published about lead and acid vapours.'

export const outdoorsOnly =
  'For air out of doors alone: rain, sun and wind, a year of it. The equations say nothing about a store, a case or a box, and least of all about a dry one. For those, hang coupons.'
