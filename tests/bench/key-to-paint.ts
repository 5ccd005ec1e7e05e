import type { Page } from 'playwright-core'

export interface Keystroke {
  /** From the moment the system reported the key to the paint after the last thing it changed. */
  readonly milliseconds: number
  readonly changed: boolean
}

declare global {
  interface Window {
    keystrokesSeen: { began: number; painted: number; changed: boolean }[]
  }
}

/**
 * Watches letters and digits as they are typed. A frame is painted when a message sent from within
 * `requestAnimationFrame` arrives. Counted are the first frame after the key and, where something inside `watched` changes
 * before the next key, the frame that shows it: an update put off until later does not look faster for it.
 */
export async function watchKeys(page: Page, watched: string): Promise<void> {
  await page.evaluate((watched) => {
    window.keystrokesSeen = []
    const whenPainted = (tell: () => void) => {
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel()
        port1.addEventListener('message', tell, { once: true })
        port1.start()
        port2.postMessage(null)
      })
    }
    const isWatched = (node: Node) =>
      (node instanceof Element ? node : node.parentElement)?.closest(watched) != null
    let current: Window['keystrokesSeen'][number] | null = null
    addEventListener(
      'keydown',
      (event) => {
        // Keys that move or leave a cell change rows too, but for no letter that was typed.
        current = null
        if ([...event.key].length !== 1 || event.ctrlKey) return
        const key = { began: event.timeStamp, painted: 0, changed: false }
        current = key
        window.keystrokesSeen.push(key)
        whenPainted(() => (key.painted = performance.now()))
      },
      { capture: true },
    )
    const watcher = new MutationObserver((changes) => {
      const key = current
      if (key === null || !changes.some(({ target }) => isWatched(target))) return
      key.changed = true
      whenPainted(() => (key.painted = performance.now()))
    })
    const everything = { subtree: true, childList: true, characterData: true, attributes: true }
    watcher.observe(document.body, everything)
  }, watched)
}

export async function painted(page: Page): Promise<readonly Keystroke[]> {
  await page.waitForTimeout(500)
  return page.evaluate(() =>
    window.keystrokesSeen.map(({ began, painted, changed }) => ({
      milliseconds: painted - began,
      changed,
    })),
  )
}
