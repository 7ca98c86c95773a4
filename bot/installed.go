package bot

// Installed says to whoever installed the bot what comes next.
func (v Voice) Installed() string {
	return v.s.word("Installed. Invite me to a channel and mention me, or write to me directly.")
}

// NotInstalled says that an installation has to be begun again.
func (v Voice) NotInstalled() string {
	return v.s.word("Not installed. Begin again from the link you were given.")
}
