/** What the tests call of the open library of ASHRAE's formulas; it brings no types of its own. */
declare module 'psychrolib' {
  interface Psychrometrics {
    readonly SI: number
    SetUnitSystem(system: number): void
    GetSatVapPres(temperatureC: number): number
    GetVapPresFromRelHum(temperatureC: number, share: number): number
    GetRelHumFromVapPres(temperatureC: number, vapourPa: number): number
    GetTDewPointFromVapPres(temperatureC: number, vapourPa: number): number
    GetHumRatioFromVapPres(vapourPa: number, airPressurePa: number): number
    GetVapPresFromHumRatio(ratio: number, airPressurePa: number): number
    GetRelHumFromHumRatio(temperatureC: number, ratio: number, airPressurePa: number): number
    GetHumRatioFromRelHum(temperatureC: number, share: number, airPressurePa: number): number
  }
  const library: Psychrometrics
  export default library
}
