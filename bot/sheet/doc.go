// Package sheet renders a day of the journal for the supervisor: as a table on
// a terminal, as JSON, as CSV for a spreadsheet, or as a page to print.
//
// What crews typed is shown and never obeyed: no escape sequence reaches a
// terminal, no formula a spreadsheet, no markup a browser.
package sheet
