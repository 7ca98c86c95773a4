package parser

// What is asked of the trade as a whole. The desk answers each in a line.
const (
	TopicBlock    Intent = "about-block"     // whether the top block sees twice the load
	TopicSnub     Intent = "about-snub"      // whether to snub or to let run
	TopicWet      Intent = "about-wet"       // whether a wet rope holds less
	TopicGreen    Intent = "about-green"     // whether green wood is heavier
	TopicHeavyEnd Intent = "about-heavy-end" // what the heavy end is
	TopicRating   Intent = "about-rating"    // what the words of a label mean
	TopicFactor   Intent = "about-factor"    // how much of a breaking strength is planned on
	TopicWrap     Intent = "about-wrap"      // what a wrap is
	TopicUnits    Intent = "about-units"     // which units we speak
	TopicLanguage Intent = "about-language"  // which languages
)

// What a crew can want explained of the last answer.
const (
	ExplainNumbers = "numbers" // how it was worked out
	ExplainAssumed = "assumed" // what was taken for granted
	ExplainBrush   = "brush"   // whether brush, leaves and bark are in the weight
)

// TopicConvert is a number in other units.
const TopicConvert Intent = "about-convert"

// TopicHands is what some people are planned for, pulling together.
const TopicHands Intent = "about-hands"

// More of what is asked of the trade as a whole.
const (
	TopicWoods     Intent = "about-woods"      // which of two trees has the heavier wood
	TopicAnyTree   Intent = "about-any-tree"   // what to type where nobody knows the tree
	TopicConfirm   Intent = "about-confirm"    // which answers somebody has to stand by
	TopicDrumSize  Intent = "about-drum-size"  // whether a thicker drum holds more
	TopicFriction  Intent = "about-friction"   // which friction we plan with
	TopicGentle    Intent = "about-gentle"     // whether a slow lower loads the rope with no more than the weight
	TopicLeaves    Intent = "about-leaves"     // whether a limb is planned with its leaves
	TopicKnot      Intent = "about-knot"       // what a knot or a splice takes off a rope's strength
	TopicMoist     Intent = "about-moist"      // whether weights are of green wood
	TopicMoreBlock Intent = "about-more-block" // whether one block more takes load off another
	TopicOldRope   Intent = "about-old-rope"   // whether a rope that was used holds less
	TopicOnePerson Intent = "about-person"     // what one person is planned for
	TopicWrapRule  Intent = "about-wrap-rule"  // whether wraps go by the pound
	TopicTail      Intent = "about-tail"       // how much rope is left behind the drum
	TopicTooFar    Intent = "about-too-far"    // what shortens a swing
	TopicWay       Intent = "about-way-round"  // which way the wraps go on
	TopicWear      Intent = "about-wear"       // gloves, helmets
)
