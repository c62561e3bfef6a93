// The chart library comes as one classic script that is read before any module; here it gets the shape of a module.
export const { scaleLog, scaleLinear, select, drag, symbol, symbolDiamond, symbolTimes, line, max, min } = globalThis.d3;
