site {}
/* a note
bank "house" {}
