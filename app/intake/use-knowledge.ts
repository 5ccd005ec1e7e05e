import { useEffect, useState } from 'react'
import type { Knowledge } from '../../lib/knowledge/knowledge.ts'
import { knowledgeFrom } from '../../lib/knowledge/load.ts'

/** The compiled knowledge, fetched once: its address names its version, so a browser may keep it for good. */
export function useKnowledge(hash: string): Knowledge | 'loading' | 'failed' {
  const [knowledge, setKnowledge] = useState<Knowledge | 'loading' | 'failed'>('loading')
  useEffect(() => {
    const stop = new AbortController()
    const load = async () => {
      const answer = await fetch(`/knowledge/${hash}`, { signal: stop.signal })
      if (!answer.ok) throw new Error(`The knowledge was answered with ${answer.status}`)
      return knowledgeFrom(await answer.text())
    }
    load().then(setKnowledge, () => {
      if (!stop.signal.aborted) setKnowledge('failed')
    })
    return () => stop.abort()
  }, [hash])
  return knowledge
}
