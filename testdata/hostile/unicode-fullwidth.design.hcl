site {
  ｐlace ＝ "boat"
}
