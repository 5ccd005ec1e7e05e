import type { FileRead } from '../../lib/tables/file-read.ts'

export const names = { fields: { find_number: ['Find No'], mass_g: ['Mass', 'Weight (g)'] }, values: {} }
export const words = [{ words: ['grenade'], not: [], hazard: 'ammunition-like' }]
export const encode = (text: string) => new TextEncoder().encode(text)
export const codes = (file: FileRead) => file.problems.map((one) => one.code)
export const finds = (file: FileRead) => file.records.map((one) => one.find_number)
