package slackchat

import (
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"log/slog"
	"regexp"
	"strings"
)

// secret matches a token of the platform, the ticket in a socket's address,
// the address that takes one file from whoever knows it and the one that
// speaks to a person.
var secret = regexp.MustCompile(`x(?:ox[a-z]|app)-[A-Za-z0-9-]+|ticket=[^&\s"']+|upload\\?/v1\\?/[^&\s"']+|(?:hooks\.slack\.com|response)\\?/[^&\s"']+`)

const hidden = "[hidden]"

func masked(s string) string { return secret.ReplaceAllLiteralString(s, hidden) }

// hide returns the error with the tokens in its text covered. What is covered
// is cut off from the errors below it, whose texts still show it.
func hide(err error) error {
	if err == nil || !secret.MatchString(err.Error()) {
		return err
	}
	return errors.New(masked(err.Error()))
}

// Masked is a handler that covers every token before the next one sees it.
func Masked(next slog.Handler) slog.Handler { return mask{next} }

type mask struct{ slog.Handler }

func (m mask) Handle(ctx context.Context, r slog.Record) error {
	clean := slog.NewRecord(r.Time, r.Level, masked(r.Message), r.PC)
	r.Attrs(func(a slog.Attr) bool {
		clean.AddAttrs(maskedAttr(a))
		return true
	})
	return m.Handler.Handle(ctx, clean)
}

func (m mask) WithAttrs(attrs []slog.Attr) slog.Handler {
	return mask{m.Handler.WithAttrs(maskedAttrs(attrs))}
}

func (m mask) WithGroup(name string) slog.Handler { return mask{m.Handler.WithGroup(name)} }

func maskedAttrs(attrs []slog.Attr) []slog.Attr {
	clean := make([]slog.Attr, len(attrs))
	for i, a := range attrs {
		clean[i] = maskedAttr(a)
	}
	return clean
}

func maskedAttr(a slog.Attr) slog.Attr {
	v := a.Value.Resolve()
	switch v.Kind() {
	case slog.KindString:
		v = slog.StringValue(masked(v.String()))
	case slog.KindGroup:
		v = slog.GroupValue(maskedAttrs(v.Group())...)
	case slog.KindAny:
		if text, shows := spelled(v.Any()); shows {
			v = slog.StringValue(masked(text))
		}
	}
	return slog.Attr{Key: masked(a.Key), Value: v}
}

// spelled returns the first spelling of a value that shows a token: a handler
// further down may choose any of them.
func spelled(v any) (text string, shows bool) {
	bytes, _ := v.([]byte)
	encoded, _ := json.Marshal(v) // what cannot be encoded is spelled by the others
	for _, text := range []string{fmt.Sprintf("%+v", v), string(bytes), string(encoded)} {
		if secret.MatchString(text) {
			return text, true
		}
	}
	return "", false
}

// library takes the lines of the library's own log.
type library struct{ log *slog.Logger }

// Output writes one line.
func (l library) Output(_ int, line string) error {
	l.log.Debug(strings.TrimSpace(line))
	return nil
}

// debugging says whether the library's own log is wanted. It then also shows
// what people wrote, and asks the platform for short-lived sockets.
func debugging(log *slog.Logger) bool { return log.Enabled(context.Background(), slog.LevelDebug) }
