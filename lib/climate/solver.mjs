// The package brings its source beside its build, and that source does not pass our checks of types: here they end.
export { Solver } from 'odex'
