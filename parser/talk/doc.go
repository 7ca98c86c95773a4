// Package talk reads what is told or asked of the day rather than of a piece: the job that
// a channel keeps, its crew and roster, the log, how an answer came about, and questions
// about the trade and about us.
package talk
