/** Readings of one sensor in time order: columns of one length, NaN where nothing was read. */
export interface Series {
  /** Moments [ms since 1970-01-01 UTC], strictly increasing. */
  readonly atMs: Float64Array
  /** Relative humidity over liquid water, as loggers report it, also below 0 °C [%]. */
  readonly rhPercent: Float32Array
  /** Temperature [°C]. */
  readonly temperatureC: Float32Array
}

/** One sensor of a logger file; a file may hold several. */
export interface Channel {
  /** As the file names it; empty where it names none. */
  readonly name: string
  readonly serial: string | null
  readonly series: Series
}

export const emptySeries: Series = {
  atMs: new Float64Array(0),
  rhPercent: new Float32Array(0),
  temperatureC: new Float32Array(0),
}
