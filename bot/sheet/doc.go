// Package sheet shows a day of the journal to the supervisor: as a table on a
// terminal, as JSON or CSV for other programs, or as one page that prints.
package sheet
