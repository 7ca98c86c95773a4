package practice

import "heft/bot/standin"

// role is who somebody is on the page. Its name is a key of the strings.
type role struct {
	Key    string
	User   string
	Direct string // the direct message with the desk
}

// The crew. Who is first is who opens the page.
var roles = []role{
	{"groundworker", "U0ROSA0001", "D0ROSA0001"},
	{"climber", "U0TEO00002", "D0TEO00002"},
	{"arborist", "U0INGE0003", "D0INGE0003"},
	{"supervisor", Supervisor, "D0SAM00004"},
}

// Supervisor is the user who sees the day and may confirm any answer.
const Supervisor = "U0SAM00004"

// jobs are the three sites of the scenario. Their names and what is to be
// done there are strings, under these ids.
var jobs = []string{"C0MILLLANE", "C0SCHOOLYD", "C0QUARRYRD"}

// Scenario is the workspace the page plays in: always the same one, so that
// what a kept journal holds for a job goes on to hold.
func Scenario() standin.Options {
	o := standin.Options{
		BotName: "heft",
		HomeTab: true,
		Scopes: []string{
			"app_mentions:read", "channels:history", "channels:read", "chat:write", "commands", "files:write",
			"im:history", "im:read", "reactions:write", "users:read",
		},
		Events: []string{"app_home_opened", "app_mention", "app_uninstalled", "member_joined_channel", "message.im", "tokens_revoked"},
		Users: []standin.User{
			{ID: roles[0].User, Name: "rosa", RealName: "Rosa"}, {ID: roles[1].User, Name: "teo", RealName: "Teo"},
			{ID: roles[2].User, Name: "inge", RealName: "Inge"}, {ID: roles[3].User, Name: "sam", RealName: "Sam"},
		},
	}
	for _, id := range jobs {
		o.Channels = append(o.Channels, standin.Channel{ID: id, Name: english[id], Topic: english[id+".topic"]})
	}
	for _, r := range roles {
		o.Channels = append(o.Channels, standin.Channel{ID: r.Direct, Name: r.Key, Members: []string{r.User}})
	}
	return o
}

// Names are the people and jobs, by their ids, as the page calls them in a
// language.
func Names(language string) map[string]string {
	say := english
	if language == "es" {
		say = spanish
	}
	names := map[string]string{}
	for _, u := range Scenario().Users {
		names[u.ID] = u.RealName
	}
	for _, job := range jobs {
		names[job] = say.Say(job)
	}
	for _, r := range roles {
		names[r.Direct] = say.Say("direct")
	}
	return names
}

// lesson is one of the questions to try: who asks it, at which job, which
// lessons it builds on, whether it follows up on the last of them, and whether
// it is no question but a button to tap. Its words are strings, under its
// number.
type lesson struct {
	Role    int
	Job     int
	Needs   []int
	Follows bool
	Tap     bool
}

// lessons are in the order of a day: a plain lower and what it may ask back,
// the job, a lift and who stands by it, a swing, what is refused, and the
// other language.
var lessons = []lesson{
	{Role: 0, Job: 0},
	{Role: 0, Job: 0, Needs: []int{0}, Follows: true},
	{Role: 0, Job: 1},
	{Role: 3, Job: 2},
	{Role: 1, Job: 2},
	{Role: 0, Job: 2, Needs: []int{3, 4}, Tap: true},
	{Role: 2, Job: 2, Needs: []int{3, 4}, Tap: true},
	{Role: 1, Job: 2},
	{Role: 0, Job: 1},
	{Role: 1, Job: 0},
}
