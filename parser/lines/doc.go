// Package lines reads how long and how thick the rope is, what has been cut off it, what
// it goes through, and whether it reaches.
package lines
