package standin

import (
	"encoding/json"
	"io"
	"mime"
	"net/http"
	"net/url"
	"strconv"
	"strings"
)

// arguments reads a query, a form or a JSON body. The token travels in the
// Authorization header or as an argument of the form, never in JSON or in a
// query (documented: Web API, calling methods and authentication).
func arguments(rw http.ResponseWriter, r *http.Request) (url.Values, string, error) {
	r.Body = http.MaxBytesReader(rw, r.Body, maxBody)
	token, _ := strings.CutPrefix(r.Header.Get("Authorization"), "Bearer ")
	if r.Method == http.MethodGet {
		args := r.URL.Query()
		args.Del("token")
		return args, token, nil
	}
	kind, _, _ := mime.ParseMediaType(r.Header.Get("Content-Type"))
	if kind != "application/json" {
		if err := r.ParseForm(); err != nil {
			return url.Values{}, "", err
		}
		if token == "" {
			token = r.PostForm.Get("token")
		}
		return r.PostForm, token, nil
	}
	args := url.Values{}
	body := map[string]json.RawMessage{}
	if err := json.NewDecoder(r.Body).Decode(&body); err != nil && err != io.EOF {
		return args, token, err
	}
	for k, v := range body {
		args.Set(k, argument(v))
	}
	args.Del("token")
	return args, token, nil
}

// argument is a JSON value as a form would have it: a string as it is, all
// else as JSON.
func argument(v json.RawMessage) string {
	var s string
	switch {
	case string(v) == "null":
		return ""
	case json.Unmarshal(v, &s) == nil:
		return s
	}
	return string(v)
}

// number reads a number of a call; left out or unreadable, it has the
// page's default.
func number(args url.Values, name string, byDefault int) int {
	if n, err := strconv.Atoi(args.Get(name)); err == nil {
		return n
	}
	return byDefault
}

// on reads a switch of a call; left out, it has the page's default.
func on(args url.Values, name string, byDefault bool) bool {
	if v, err := strconv.ParseBool(args.Get(name)); err == nil {
		return v
	}
	return byDefault
}

// first returns the first refusal there is.
func first(refusals ...answer) answer {
	for _, r := range refusals {
		if r != nil {
			return r
		}
	}
	return nil
}
