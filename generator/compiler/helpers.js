// What compiled calculators need of Python: one function per helper, emitted only when it is used.

// An error as Python would raise it.
function error(name, text) {
  const made = new Error(text);
  made.name = name;
  return made;
}

// A whole number that is still exact; + 0 makes -0 plain.
function whole(x) {
  if (!(x >= -9007199254740991 && x <= 9007199254740991)) throw error("OverflowError", "whole number beyond 2**53");
  return x + 0;
}

// A float without a fraction becomes an int.
function integer(x) {
  if (x !== x) throw error("ValueError", "cannot convert float NaN to integer");
  return whole(x);
}

function floor(x) {
  return integer(Math.floor(x));
}

function ceil(x) {
  return integer(Math.ceil(x));
}

function truncate(x) {
  return integer(Math.trunc(x));
}

// Halves go to the even neighbour.
function round(x) {
  const low = Math.floor(x);
  const rest = x - low;
  return integer(rest > 0.5 || (rest === 0.5 && low % 2 !== 0) ? low + 1 : low);
}

function divide(a, b) {
  if (b === 0) throw error("ZeroDivisionError", "division by zero");
  return a / b;
}

// a // b: down, also below zero.
function quotient(a, b) {
  const rest = remainder(a, b);
  return whole((a - a % b) / b - (rest !== 0 && rest !== a % b ? 1 : 0));
}

// a % b: with the sign of b.
function remainder(a, b) {
  if (b === 0) throw error("ZeroDivisionError", "division by zero");
  const rest = a % b;
  return rest !== 0 && rest < 0 !== b < 0 ? rest + b : rest + 0;
}

function sqrt(x) {
  if (x < 0) throw error("ValueError", "square root of a negative number");
  return Math.sqrt(x);
}

// xs[i]; negative i counts from the end.
function at(xs, i) {
  const place = i < 0 ? i + xs.length : i;
  if (place < 0 || place >= xs.length) throw error("IndexError", "list index out of range");
  return xs[place];
}

// The first of the smallest.
function min(xs) {
  if (xs.length === 0) throw error("ValueError", "min of an empty list");
  return xs.reduce((best, x) => (x < best ? x : best));
}

// The first of the largest.
function max(xs) {
  if (xs.length === 0) throw error("ValueError", "max of an empty list");
  return xs.reduce((best, x) => (x > best ? x : best));
}

function sum(xs) {
  return xs.reduce((total, x) => whole(total + x), 0);
}

// The exact sum of floats, rounded once (Shewchuk, as in Python): partial sums that do not overlap.
function fsum(xs) {
  const partials = [];
  let special = 0;
  let infinite = 0;
  for (const given of xs) {
    let x = given;
    let kept = 0;
    for (let y of partials) {
      if (Math.abs(x) < Math.abs(y)) [x, y] = [y, x];
      const high = x + y;
      const low = y - (high - x);
      if (low !== 0) partials[kept++] = low;
      x = high;
    }
    partials.length = kept;
    if (Number.isFinite(x)) {
      if (x !== 0) partials.push(x);
    } else {
      if (Number.isFinite(given)) throw error("OverflowError", "intermediate overflow in fsum");
      if (given === given) infinite += given;
      special += given;
      partials.length = 0;
    }
  }
  if (infinite !== infinite) throw error("ValueError", "-inf + inf in fsum");
  return special !== 0 ? special : roundedOnce(partials);
}

// The sum of partials that do not overlap, smallest first; a half is decided by the sign of what lies below it.
function roundedOnce(partials) {
  let high = partials.length > 0 ? partials.pop() : 0;
  let low = 0;
  while (partials.length > 0 && low === 0) {
    const x = high;
    const y = partials.pop();
    high = x + y;
    low = y - (high - x);
  }
  const below = partials.length > 0 ? partials[partials.length - 1] : 0;
  if ((low < 0 && below < 0) || (low > 0 && below > 0)) {
    const twice = low * 2;
    const up = high + twice;
    if (up - high === twice) high = up;
  }
  return high;
}

// [first] * times.
function repeat(xs, times) {
  let made = [];
  for (let i = 0; i < times; i += 1) made = made.concat(xs);
  return made;
}

function range(start, stop, step) {
  const made = [];
  for (let i = start; step > 0 ? i < stop : i > stop; i += step) made.push(i);
  return made;
}

function enumerate(xs) {
  return xs.map((x, i) => [i, x]);
}

function zip(...lists) {
  return range(0, min(lists.map((xs) => xs.length)), 1).map((i) => lists.map((xs) => xs[i]));
}

// [item(x) for x in xs if keep(x)]
function collect(xs, keep, item) {
  const made = [];
  for (const x of xs) if (keep(x)) made.push(item(x));
  return made;
}

// sorted(xs, key=...): by a number, stable.
function sorted(xs, key) {
  const marked = xs.map((x, i) => ({ x: x, i: i, key: key(x) }));
  marked.sort((a, b) => (a.key < b.key ? -1 : a.key > b.key ? 1 : a.i - b.i));
  return marked.map((mark) => mark.x);
}

// One more step of a while loop.
function step(taken) {
  if (taken >= 10000000) throw error("RuntimeError", "a loop did not end");
  return taken + 1;
}
