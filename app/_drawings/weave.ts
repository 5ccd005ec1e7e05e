/** Threads over and under, row by row: the gaps show which lies on top. */
function weave(): { readonly over: string; readonly under: string } {
  let over = ''
  let under = ''
  for (let row = 0; row < 7; row += 1)
    for (let column = 0; column < 7; column += 1) {
      const [x, y] = [72 + column * 11, 26 + row * 11]
      if ((row + column) % 2 === 0) over += `M${x - 8} ${y}h16`
      else under += `M${x} ${y - 8}v16`
    }
  return { over, under }
}

export const threads = weave()
