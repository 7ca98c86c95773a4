package practice

import (
	"fmt"
	"net"
	"net/http"
)

// CheckAddr refuses an address that other machines could reach: whoever
// opens the page speaks as anyone of the crew.
func CheckAddr(addr string) error {
	host, _, err := net.SplitHostPort(addr)
	if err != nil {
		return fmt.Errorf("an address looks like 127.0.0.1:8420: host, colon, port: %w", err)
	}
	if !loopback(host) {
		return fmt.Errorf("the practice page is for this machine alone: %q is no loopback address, try 127.0.0.1", host)
	}
	return nil
}

// loopback says whether a host is this machine's own. Names are not looked
// up: they may point anywhere tomorrow.
func loopback(host string) bool { return host == "localhost" || net.ParseIP(host).IsLoopback() }

// ownHost answers only under a name of this machine, so that no page from
// elsewhere can have its own name point here and read along.
func ownHost(next http.Handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		host, _, err := net.SplitHostPort(r.Host)
		if err != nil {
			host = r.Host
		}
		if !loopback(host) {
			http.Error(w, "this page is served as 127.0.0.1 or localhost", http.StatusMisdirectedRequest)
			return
		}
		next.ServeHTTP(w, r)
	})
}
