import type { Metadata, Viewport } from 'next'
import localFont from 'next/font/local'
import type { ReactNode } from 'react'
import { Footer } from './_frame/footer.tsx'
import { Header } from './_frame/header.tsx'
import { themeHere } from './_server/theme.ts'
import './_style/tokens.css'
import './_style/base.css'
import './_style/layout.css'
import './_style/forms.css'
import './_style/print.css'

const legible = localFont({
  src: [
    {
      path: '../node_modules/@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-wght-normal.woff2',
      style: 'normal',
      weight: '200 800',
    },
    {
      path: '../node_modules/@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-wght-italic.woff2',
      style: 'italic',
      weight: '200 800',
    },
  ],
  variable: '--face-legible',
  display: 'swap',
})

export const metadata: Metadata = {
  title: { default: 'Quietmetal', template: '%s · Quietmetal' },
  description:
    'From condition records of corroded metalwork to a plan: keeping, packing, urgency, requests, cautions.',
}

export const viewport: Viewport = {
  colorScheme: 'light dark',
  themeColor: [
    { media: '(prefers-color-scheme: light)', color: '#fcfbf8' },
    { media: '(prefers-color-scheme: dark)', color: '#1b1d1f' },
  ],
}

export default async function Layout({ children }: { readonly children: ReactNode }) {
  const theme = await themeHere()
  return (
    <html lang="en-GB" className={legible.variable} data-theme={theme === 'device' ? undefined : theme}>
      <body>
        <Header />
        <main id="content" className="page" tabIndex={-1}>
          {children}
        </main>
        <Footer />
      </body>
    </html>
  )
}
