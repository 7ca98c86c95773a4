// Package language holds all that differs between the languages that crews
// use, one file a language, named by its tag: en.txt, es.txt.
//
// Such a file has two parts. Under [words] stand the words that questions are
// read by; package lexicon gives them meaning. Under [sentences] stand the
// sentences of the answers: the English one as the desk has it, and indented
// below it what it is in this language. A \n stands for a line break in a
// caption. English needs no sentences.
package language
