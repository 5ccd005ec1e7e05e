import 'server-only'
import { cookies } from 'next/headers'

export const themes = ['device', 'paper', 'graphite'] as const
export type Theme = (typeof themes)[number]
export const themeCookie = 'quietmetal-theme'

export async function themeHere(): Promise<Theme> {
  const kept = (await cookies()).get(themeCookie)?.value
  return themes.find((theme) => theme === kept) ?? 'device'
}
