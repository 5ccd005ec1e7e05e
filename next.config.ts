import type { NextConfig } from 'next'

const development = process.env.NODE_ENV === 'development'

/** Everything a page loads comes from the tool itself; the inline scripts are Next's own start-up data. */
const contentSecurityPolicy = [
  "default-src 'self'",
  `script-src 'self' 'unsafe-inline'${development ? " 'unsafe-eval'" : ''}`,
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  `connect-src 'self'${development ? ' ws:' : ''}`,
  "worker-src 'self' blob:",
  "object-src 'none'",
  "base-uri 'self'",
  "form-action 'self'",
  "frame-ancestors 'none'",
].join('; ')

const config: NextConfig = {
  poweredByHeader: false,
  // Types are checked by `npm test` with the same compiler; a second check would only slow `npm start`.
  typescript: { ignoreBuildErrors: true },
  serverExternalPackages: ['pg', 'highs'],
  // A bag of some thousand rows is sent as it was typed.
  experimental: { serverActions: { bodySizeLimit: '16mb' } },
  async headers() {
    return [
      {
        source: '/:path*',
        headers: [
          { key: 'Content-Security-Policy', value: contentSecurityPolicy },
          { key: 'X-Content-Type-Options', value: 'nosniff' },
          { key: 'X-Frame-Options', value: 'DENY' },
          // Nothing is told to other sites. To this one it must be: a form sent without scripts has no origin otherwise.
          { key: 'Referrer-Policy', value: 'same-origin' },
          { key: 'Cross-Origin-Opener-Policy', value: 'same-origin' },
          { key: 'Permissions-Policy', value: 'camera=(self), microphone=(), geolocation=()' },
        ],
      },
    ]
  },
}

export default config
