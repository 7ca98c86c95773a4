package reading

// mostAlike is how many pieces anybody tells of at once.
const mostAlike = 50

// ManySlips is where a message is past mending word by word.
const ManySlips = 4

// MostWraps is how many wraps anybody could mean: "hitch 35 wraps" is a hitch
// and a question about wraps.
const MostWraps = 15

// Roundest is the thickest that a number in metres is taken for a diameter
// rather than a length; thickest is the most that any diameter is.
const (
	Roundest = 1.2
	Thickest = 3

	MostParts     = 20 // "una troza de 2200 con partes de línea" counts none
	MostPeople    = 30 // nor does "he's about 160 and holding 600 lb"
	ManyRedirects = 8  // more than these is no count of redirects
)

// ThickestRope is the thickest that a number right beside a rope is taken for, in
// metres: what is thinner is of no piece.
const ThickestRope = 0.05
