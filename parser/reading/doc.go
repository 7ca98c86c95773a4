// Package reading holds a message on its way from text to question: a row of elements,
// each a figure, a term or a pause. The rooms above read it, and settle in place what an
// element is; what they have in common is here, with what figures alone can tell: ranges,
// lists, numbers that are joined.
package reading
