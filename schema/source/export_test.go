package source

// CountTokens gives the tests the guard's count of tokens.
func CountTokens(text []byte) int {
	_, tokens := scan(NewFile("f", text))
	return tokens
}
