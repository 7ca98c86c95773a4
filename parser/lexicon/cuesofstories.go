package lexicon

import "heft/parser/scan"

// Who tells a story and dictates it says much around what is asked: what somebody's hand holds,
// what a foot of wood weighs, which rope took the place of which.

// The cues of what stands in it.
const (
	CueByThe      scan.Cue = "by-the"      // between what it weighs and a foot or a metre: "50 lb a foot"
	CueExactly    scan.Cue = "exactly"     // before where gear is, that it is right there: "dead above"
	CueHandHolds  scan.Cue = "hand-holds"  // between one person and what their hand holds
	CueSoundsTwo  scan.Cue = "sounds-two"  // how two sounds, behind an article
	CueSwapped    scan.Cue = "swapped"     // before a rope that another takes the place of
	CueSwappedFor scan.Cue = "swapped-for" // between the two
	CueAnswersIn  scan.Cue = "answers-in"  // behind a denial, before the units that nobody wants to be told in
	CueOneWrap    scan.Cue = "one-wrap"    // one wrap of several, which is put on or taken off
	CueHowMany    scan.Cue = "how-many"    // before what is counted
	CueSortOf     scan.Cue = "sort-of"     // behind gear, before its size: "the small kind"
	CueWrapPost   scan.Cue = "wrap-post"   // a post, which may be what the rope is wrapped round
	CueStarts     scan.Cue = "starts"      // between the blocks of a tackle and how far apart they are
	CueRepeats    scan.Cue = "repeats"     // what is counted there, of something that is done: "times"
)
