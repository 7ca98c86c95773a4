// Echo says back in the thread what it was told: the least that a bot on this
// library does, written as the library's own examples are. Heft is measured
// beside it.
package main

import (
	"log"
	"os"
	"strings"

	"github.com/slack-go/slack"
	"github.com/slack-go/slack/slackevents"
	"github.com/slack-go/slack/socketmode"
)

func main() {
	api := slack.New(os.Getenv("SLACK_BOT_TOKEN"),
		slack.OptionAppLevelToken(os.Getenv("SLACK_APP_TOKEN")),
		slack.OptionAPIURL(os.Getenv("SLACK_API_URL")),
	)
	handler := socketmode.NewSocketmodeHandler(socketmode.New(api))
	handler.HandleEvents(slackevents.AppMention, repeat)
	log.Fatal(handler.RunEventLoop())
}

// repeat acknowledges a mention and posts its text in its thread.
func repeat(ev *socketmode.Event, client *socketmode.Client) {
	outer, _ := ev.Data.(slackevents.EventsAPIEvent)
	mention, ok := outer.InnerEvent.Data.(*slackevents.AppMentionEvent)
	if !ok {
		return
	}
	if err := client.Ack(*ev.Request); err != nil {
		log.Print(err)
	}
	_, text, _ := strings.Cut(mention.Text, "> ") // without calling itself
	_, _, err := client.PostMessage(mention.Channel,
		slack.MsgOptionText(text, false), slack.MsgOptionTS(mention.TimeStamp))
	if err != nil {
		log.Print(err)
	}
}
