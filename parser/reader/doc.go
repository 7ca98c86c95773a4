// Package reader reads a message: it asks everything that the rooms of parser know of it,
// in order, and makes the Question of what it finds, or the Ask.
//
// The path is text → tongue, the languages that it is read by → tokens → tree →
// elements: figures, terms and pauses → what ends all arithmetic → numbers that are none
// of the question set apart, and those that their neighbours claim → placed quantities →
// Question, or what must be asked.
package reader
