package bot

// Voice says what the surfaces of a workspace say besides replies, in one
// language.
type Voice struct{ s speaker }

// VoiceOf speaks a language by its tag; an unknown one is English.
func VoiceOf(tag string) Voice { return Voice{speaker{language: tag}} }

// Voice is what the reply is spoken in.
func (r Reply) Voice() Voice { return Voice{r.voice} }
