import { files } from './small-content.ts'

/** The small content with an evidence base beside it, without a flaw of its own. The numbers and grades mean nothing. */
export const evidenceFiles: Readonly<Record<string, string>> = {
  ...files,
  'vocabulary/units.yaml': `${files['vocabulary/units.yaml']}
- { id: micrometre, label: micrometres, printed: µm }
- { id: minute, label: minutes, printed: min }
- { id: hour, label: hours, printed: hours }
- { id: calendar-year, label: calendar year, printed: "" }
`,
  'vocabulary/codes-evidence-small.yaml': `
- { id: tinning, label: Tinning, means: a coat of tin }
- { id: silvering, label: Silvering, means: a coat of silver }
- { id: active-chloride-corrosion, label: Active, means: it goes on }
`,
  'figures/evidence.yaml': `
- { id: thin-crust, says: A thin crust, quantity: length, value: 20, as-printed: "20", unit: micrometre, valid-for: nothing,
    source: { work: read-1999, place: p. 4 }, known: read, certainty: supported }
- { id: thick-crust, says: A thick crust, quantity: length, value: 200, as-printed: "200", unit: micrometre, valid-for: nothing,
    source: { work: read-1999, place: p. 4 }, known: read, certainty: supported }
- { id: short-time, says: A short time, quantity: duration, value: 5, as-printed: "5", unit: minute, valid-for: nothing,
    source: { work: read-1999, place: p. 5 }, known: read, certainty: supported }
- { id: long-time, says: A long time, quantity: duration, value: 2, as-printed: "2", unit: hour, valid-for: nothing,
    source: { work: remembered-1997, place: null }, known: memory, certainty: opinion }
- { id: early, says: An early year, quantity: date, value: 400, as-printed: "400", unit: calendar-year, valid-for: nothing,
    source: { work: read-1999, place: p. 6 }, known: read, certainty: supported }
`,
  'methods/small.yaml': `
- id: xrf
  label: Fluorescence
  answers: Elements.
  cannot: Name a mineral.
  kind: analysis
  sampling: false
  harm: touches
  leave: false
  minutes: { set-up: short-time, each: long-time }
  who: Somebody trained
  order: 1
  cautions: []
  sources: [{ work: read-1999, place: p. 1, says: supports, known: read }]
- id: xrd
  label: Diffraction
  answers: Minerals.
  cannot: See everything.
  kind: analysis
  sampling: true
  harm: loose-powder
  leave: false
  minutes: { set-up: short-time, each: short-time }
  who: Somebody trained
  order: 2
  cautions: []
  sources: [{ work: read-1999, place: p. 1, says: supports, known: read }]
`,
  'questions/small.yaml': `
- id: skin-edge
  asks: How does it end?
  tell: Look at it.
  why: It tells.
  by: eye
  answers:
    - { id: lifting-edge, label: It lifts, tell: A rim. }
    - { id: thin-edge, label: It thins, tell: No rim. }
`,
  'elements/small.yaml': `
- id: sn
  symbol: Sn
  label: Tin
  density-g-per-cm3: 7.3
  lines-kev: { Ka1: 25.3, La1: 3.4 }
  edges-kev: { K: 29.2 }
  attenuation: [[1, 8000], [4, 900], [4, 1500], [30, 40]]
  sources: [{ work: read-1999, place: p. 1, says: supports, known: read }]
- id: o
  symbol: O
  label: Oxygen
  density-g-per-cm3: 0.001
  lines-kev: {}
  edges-kev: {}
  attenuation: [[1, 4000], [30, 0.4]]
  sources: [{ work: read-1999, place: p. 1, says: supports, known: read }]
`,
  'matrices/small.yaml': `
- id: cassiterite
  label: Cassiterite
  density-g-per-cm3: 6.9
  parts: [[Sn, 0.788], [O, 0.212]]
  sources: [{ work: read-1999, place: p. 1, says: supports, known: read }]
`,
  'evidence/white-skin.yaml': `# Kept to the letter.
matter: white-skin
asks: What is it?
about: [{ evidence: white-metal-sheen }, { seen: grey-skin }]
where: { material: { none: [silver] } }
rivals:
  - id: tinning
    says: A coat of tin.
    priors:
      - { when: { material: [bronze] }, odds: usual, because: It is common., sources: [{ work: read-1999, place: p. 1, says: supports, known: read }] }
      - { odds: common, because: It is known., sources: [{ work: house-rule, place: null, says: supports, known: common-practice }] }
    settled: { part: { role: coating, material: tin }, seen: [grey-skin], tests: ["xrf:Sn"] }
  - id: silvering
    says: A coat of silver.
    priors:
      - { odds: seldom, because: It is rare., sources: [{ work: house-rule, place: null, says: supports, known: common-practice }] }
  - id: active-chloride-corrosion
    says: It goes on.
    priors:
      - { odds: seldom, because: It is rare., sources: [{ work: house-rule, place: null, says: supports, known: common-practice }] }
groups:
  - id: skin-edge
    label: How it ends
    by: eye
    question: skin-edge
    states:
      # A block.
      - id: lifting-edge
        says: it lifts
        fits: { tinning: rare, silvering: frequent, active-chloride-corrosion: rare }  # by eye
        sources:
          - { work: read-1999, place: p. 1, says: supports, known: read }
      - { id: thin-edge, says: it thins,
          fits: { tinning: typical, silvering: occasional, active-chloride-corrosion: rare },
          sources: [{ work: remembered-1997, place: null, says: supports, known: memory }] }
    rest: { says: it ends otherwise, fits: { tinning: occasional, silvering: occasional, active-chloride-corrosion: typical } }
  - id: skin-elements
    label: Elements
    by: xrf
    states:
      - { id: silver, says: silver was found, when: { xrf: [Ag] }, fits: { tinning: excluded, silvering: typical, active-chloride-corrosion: rare }, sources: [{ work: read-1999, place: p. 2, says: supports, known: read }] }
      - { id: tin, says: tin was found, when: { xrf: [Sn] }, fits: { tinning: typical, silvering: rare, active-chloride-corrosion: rare }, sources: [{ work: read-1999, place: p. 2, says: supports, known: read }] }
    rest: { says: neither was found, fits: { tinning: rare, silvering: rare, active-chloride-corrosion: typical } }
    failures:
      - { id: through-a-crust, says: The line does not come out., when: { seen: [grey-skin] }, as: rest, depth: { line: Sn La1, through: cassiterite, crust-um: [thin-crust, thick-crust] }, sources: [{ work: read-1999, place: p. 3, says: supports, known: read }] }
      - { id: beside-it, says: The spot lay beside it., of: [silvering], as: tin, grade: occasional, sources: [{ work: house-rule, place: null, says: supports, known: common-practice }] }
  - id: skin-minerals
    label: Minerals
    by: xrd
    states:
      - { id: salt, says: a salt was found, when: { xrd: [nantokite] }, fits: { tinning: rare, silvering: rare, active-chloride-corrosion: typical }, sources: [{ work: read-1999, place: p. 2, says: supports, known: read }] }
    rest: { says: no salt was found, fits: { tinning: typical, silvering: typical, active-chloride-corrosion: occasional } }
`,
}
