// Package parser reads a crew's words into a Question: every quantity, tree
// and wish that was said, with the words that said it, and nothing that was
// not. What it cannot place it asks about; it never guesses silently.
//
// The path is text → tongue, the languages that it is read by → tokens → tree →
// elements: figures, terms and pauses → what ends all arithmetic → numbers that are
// none of the question set apart, and those that their neighbours claim → placed
// quantities: words bind their numbers (assign), bare ones take the place that the
// trade leaves them (place) → Question, or what must be asked.
//
// Words and their meanings live in language/en.txt and language/es.txt, names
// of trees in names.csv; what they must be read as, line by line, in
// testdata/questions.
//
// # The files
//
// By what they do with a message, in the order that it goes through them. Each begins
// with what it reads and an example.
//
// Text to words, numbers and pauses:
//
//	tokens, scan, scanwords, grammar, number, numberwords, units, fold
//
// Which languages, and what their files say:
//
//	tongue, dialect, lexicon, readfiles, trie, meaning, flags, term, cues, names,
//	called, talk
//
// A word that is typed badly:
//
//	alias, spell, sound, glue
//
// Words and numbers to elements:
//
//	elements, figure, join, ranges, spaced, spokenpoint, spokenhundreds, thousands,
//	commas, toldranges
//
// No figures at all:
//
//	halts, halted, below, deadhold, hurt, harm, body, footing, dropped, fallenwood,
//	doubted, gearstops, ropeline,
//	dangers, dangerwords, dangertokens
//
// Words that turn a meaning, and those that are left out:
//
//	turning, clause, asides, contrary, negated, turnless, unturned, denials, corrections, more, theother,
//	another, fresh, selftoo, peoplesum, folds, putaside, purpose, supposed, overlook,
//	someone, said, wind, times, tellers, counted, unitsaside
//
// Words that are one thing here and another there:
//
//	otherwise, order, wanted, straight, standing, ends, drygear, eithertree, undecided, compare,
//	wagers, alike, eachsized, slips, onemore
//
// How large a number is:
//
//	lend, loads, hauled, bare, metric, tons, tonnes, girth, sized, stem, rounds, fall
//
// Whose a number is:
//
//	claims, beside, assign, options, place, places, fields, heights, aside, hanging, swinging, slant,
//	offset, over, hinged, raised, laid, lead, turns, turnlists, angles, twolines, tension, pulls,
//	pulltold, power, crosslist, crosstrees, cuteach, toomuch, neverover, limits,
//	ropecut, ropelengths, ropethick, ropethrough, reach, reachplace
//
// Gear, anchors and what is around:
//
//	gearpart, gearsize, rigged, ratings, ratingasks, smallrating, rated, anchored,
//	blockload, blockwood, colours, surroundings, obstacle, told
//
// The question:
//
//	question, read, plain, quantities, intent, missing, species, list, job, facts, crew,
//	roster, formerly, asksus, handsasked, logasked, trade, explain, words
//
// Shares of people, of a pull and of a load:
//
//	shares, reckoned, per, percent
//
// What must be asked:
//
//	ask, wordasks, unitasks, spare, tellshow
package parser
