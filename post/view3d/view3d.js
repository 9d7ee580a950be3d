/*
This script is a part of splicewright, under GPL-2.0-or-later, and holds pieces of these libraries:

vtk.js, BSD-3-Clause
Copyright (c) 2016, Kitware Inc. All rights reserved.
Copyright (c) 2016 Ken Martin, Will Schroeder, Bill Lorensen. All rights reserved.

gl-matrix, MIT
Copyright (c) 2015-2021, Brandon Jones, Colin MacKenzie IV.

seedrandom, MIT
Copyright 2019 David Bau.

fast-deep-equal, MIT
Copyright (c) 2017 Evgeny Poberezkin

spark-md5, MIT at choice
Copyright (C) 2015 Andre Cruz

BSD-3-Clause:

Redistribution and use in source and binary forms, with or without
modification, are permitted provided that the following conditions are met:

- Redistributions of source code must retain the above copyright notice, this
  list of conditions and the following disclaimer.

- Redistributions in binary form must reproduce the above copyright notice,
  this list of conditions and the following disclaimer in the documentation
  and/or other materials provided with the distribution.

- Neither the name of the copyright holder nor the names of its
  contributors may be used to endorse or promote products derived from
  this software without specific prior written permission.

THIS SOFTWARE IS PROVIDED BY THE COPYRIGHT HOLDERS AND CONTRIBUTORS "AS IS"
AND ANY EXPRESS OR IMPLIED WARRANTIES, INCLUDING, BUT NOT LIMITED TO, THE
IMPLIED WARRANTIES OF MERCHANTABILITY AND FITNESS FOR A PARTICULAR PURPOSE ARE
DISCLAIMED. IN NO EVENT SHALL THE COPYRIGHT HOLDER OR CONTRIBUTORS BE LIABLE
FOR ANY DIRECT, INDIRECT, INCIDENTAL, SPECIAL, EXEMPLARY, OR CONSEQUENTIAL
DAMAGES (INCLUDING, BUT NOT LIMITED TO, PROCUREMENT OF SUBSTITUTE GOODS OR
SERVICES; LOSS OF USE, DATA, OR PROFITS; OR BUSINESS INTERRUPTION) HOWEVER
CAUSED AND ON ANY THEORY OF LIABILITY, WHETHER IN CONTRACT, STRICT LIABILITY,
OR TORT (INCLUDING NEGLIGENCE OR OTHERWISE) ARISING IN ANY WAY OUT OF THE USE
OF THIS SOFTWARE, EVEN IF ADVISED OF THE POSSIBILITY OF SUCH DAMAGE.

MIT:

Permission is hereby granted, free of charge, to any person obtaining a copy of this software and associated
documentation files (the "Software"), to deal in the Software without restriction, including without limitation the
rights to use, copy, modify, merge, publish, distribute, sublicense, and/or sell copies of the Software, and to permit
persons to whom the Software is furnished to do so, subject to the following conditions:

The above copyright notice and this permission notice shall be included in all copies or substantial portions of the
Software.

THE SOFTWARE IS PROVIDED "AS IS", WITHOUT WARRANTY OF ANY KIND, EXPRESS OR IMPLIED, INCLUDING BUT NOT LIMITED TO THE
WARRANTIES OF MERCHANTABILITY, FITNESS FOR A PARTICULAR PURPOSE AND NONINFRINGEMENT. IN NO EVENT SHALL THE AUTHORS OR
COPYRIGHT HOLDERS BE LIABLE FOR ANY CLAIM, DAMAGES OR OTHER LIABILITY, WHETHER IN AN ACTION OF CONTRACT, TORT OR
OTHERWISE, ARISING FROM, OUT OF OR IN CONNECTION WITH THE SOFTWARE OR THE USE OR OTHER DEALINGS IN THE SOFTWARE.
*/
(()=>{var L0=Object.create;var Vn=Object.defineProperty;var D0=Object.getOwnPropertyDescriptor;var _0=Object.getOwnPropertyNames;var m0=Object.getPrototypeOf,F0=Object.prototype.hasOwnProperty;var me=(t,e)=>()=>{try{return e||t((e={exports:{}}).exports,e),e.exports}catch(r){throw e=0,r}},mt=(t,e)=>{for(var r in e)
Vn(t,r,{get:e[r],enumerable:!0})},N0=(t,e,r,n)=>{if(e&&typeof e=="object"||typeof e=="function")for(let a of _0(e))!F0.call(
t,a)&&a!==r&&Vn(t,a,{get:()=>e[a],enumerable:!(n=D0(e,a))||n.enumerable});return t};var ur=(t,e,r)=>(r=t!=null?L0(m0(t)):{},N0(e||!t||!t.__esModule?Vn(r,"default",{value:t,enumerable:!0}):r,t));var Un=me((NC,Ss)=>{"use strict";Ss.exports=function t(e,r){if(e===r)return!0;if(e&&r&&typeof e=="object"&&typeof r=="ob\
ject"){if(e.constructor!==r.constructor)return!1;var n,a,s;if(Array.isArray(e)){if(n=e.length,n!=r.length)return!1;for(a=
n;a--!==0;)if(!t(e[a],r[a]))return!1;return!0}if(e.constructor===RegExp)return e.source===r.source&&e.flags===r.flags;if(e.
valueOf!==Object.prototype.valueOf)return e.valueOf()===r.valueOf();if(e.toString!==Object.prototype.toString)return e.toString()===
r.toString();if(s=Object.keys(e),n=s.length,n!==Object.keys(r).length)return!1;for(a=n;a--!==0;)if(!Object.prototype.hasOwnProperty.
call(r,s[a]))return!1;for(a=n;a--!==0;){var i=s[a];if(!t(e[i],r[i]))return!1}return!0}return e!==e&&r!==r}});var Ui=me((Bi,aa)=>{(function(t,e,r){function n(o){var f=this,c=i();f.next=function(){var u=2091639*f.s0+f.c*23283064365386963e-26;
return f.s0=f.s1,f.s1=f.s2,f.s2=u-(f.c=u|0)},f.c=1,f.s0=c(" "),f.s1=c(" "),f.s2=c(" "),f.s0-=c(o),f.s0<0&&(f.s0+=1),f.s1-=
c(o),f.s1<0&&(f.s1+=1),f.s2-=c(o),f.s2<0&&(f.s2+=1),c=null}function a(o,f){return f.c=o.c,f.s0=o.s0,f.s1=o.s1,f.s2=o.s2,
f}function s(o,f){var c=new n(o),u=f&&f.state,h=c.next;return h.int32=function(){return c.next()*4294967296|0},h.double=
function(){return h()+(h()*2097152|0)*11102230246251565e-32},h.quick=h,u&&(typeof u=="object"&&a(u,c),h.state=function(){
return a(c,{})}),h}function i(){var o=4022871197,f=function(c){c=String(c);for(var u=0;u<c.length;u++){o+=c.charCodeAt(u);
var h=.02519603282416938*o;o=h>>>0,h-=o,h*=o,o=h>>>0,h-=o,o+=h*4294967296}return(o>>>0)*23283064365386963e-26};return f}
e&&e.exports?e.exports=s:r&&r.amd?r(function(){return s}):this.alea=s})(Bi,typeof aa=="object"&&aa,typeof define=="funct\
ion"&&define)});var ki=me((Gi,sa)=>{(function(t,e,r){function n(i){var o=this,f="";o.x=0,o.y=0,o.z=0,o.w=0,o.next=function(){var u=o.x^o.
x<<11;return o.x=o.y,o.y=o.z,o.z=o.w,o.w^=o.w>>>19^u^u>>>8},i===(i|0)?o.x=i:f+=i;for(var c=0;c<f.length+64;c++)o.x^=f.charCodeAt(
c)|0,o.next()}function a(i,o){return o.x=i.x,o.y=i.y,o.z=i.z,o.w=i.w,o}function s(i,o){var f=new n(i),c=o&&o.state,u=function(){
return(f.next()>>>0)/4294967296};return u.double=function(){do var h=f.next()>>>11,l=(f.next()>>>0)/4294967296,p=(h+l)/(1<<
21);while(p===0);return p},u.int32=f.next,u.quick=u,c&&(typeof c=="object"&&a(c,f),u.state=function(){return a(f,{})}),u}
e&&e.exports?e.exports=s:r&&r.amd?r(function(){return s}):this.xor128=s})(Gi,typeof sa=="object"&&sa,typeof define=="fun\
ction"&&define)});var Hi=me((zi,ia)=>{(function(t,e,r){function n(i){var o=this,f="";o.next=function(){var u=o.x^o.x>>>2;return o.x=o.y,o.
y=o.z,o.z=o.w,o.w=o.v,(o.d=o.d+362437|0)+(o.v=o.v^o.v<<4^(u^u<<1))|0},o.x=0,o.y=0,o.z=0,o.w=0,o.v=0,i===(i|0)?o.x=i:f+=i;
for(var c=0;c<f.length+64;c++)o.x^=f.charCodeAt(c)|0,c==f.length&&(o.d=o.x<<10^o.x>>>4),o.next()}function a(i,o){return o.
x=i.x,o.y=i.y,o.z=i.z,o.w=i.w,o.v=i.v,o.d=i.d,o}function s(i,o){var f=new n(i),c=o&&o.state,u=function(){return(f.next()>>>
0)/4294967296};return u.double=function(){do var h=f.next()>>>11,l=(f.next()>>>0)/4294967296,p=(h+l)/(1<<21);while(p===0);
return p},u.int32=f.next,u.quick=u,c&&(typeof c=="object"&&a(c,f),u.state=function(){return a(f,{})}),u}e&&e.exports?e.exports=
s:r&&r.amd?r(function(){return s}):this.xorwow=s})(zi,typeof ia=="object"&&ia,typeof define=="function"&&define)});var Ai=me((Wi,oa)=>{(function(t,e,r){function n(i){var o=this;o.next=function(){var c=o.x,u=o.i,h,l,p;return h=c[u],h^=h>>>
7,l=h^h<<24,h=c[u+1&7],l^=h^h>>>10,h=c[u+3&7],l^=h^h>>>3,h=c[u+4&7],l^=h^h<<7,h=c[u+7&7],h=h^h<<13,l^=h^h<<9,c[u]=l,o.i=
u+1&7,l};function f(c,u){var h,l,p=[];if(u===(u|0))l=p[0]=u;else for(u=""+u,h=0;h<u.length;++h)p[h&7]=p[h&7]<<15^u.charCodeAt(
h)+p[h+1&7]<<13;for(;p.length<8;)p.push(0);for(h=0;h<8&&p[h]===0;++h);for(h==8?l=p[7]=-1:l=p[h],c.x=p,c.i=0,h=256;h>0;--h)
c.next()}f(o,i)}function a(i,o){return o.x=i.x.slice(),o.i=i.i,o}function s(i,o){i==null&&(i=+new Date);var f=new n(i),c=o&&
o.state,u=function(){return(f.next()>>>0)/4294967296};return u.double=function(){do var h=f.next()>>>11,l=(f.next()>>>0)/
4294967296,p=(h+l)/(1<<21);while(p===0);return p},u.int32=f.next,u.quick=u,c&&(c.x&&a(c,f),u.state=function(){return a(f,
{})}),u}e&&e.exports?e.exports=s:r&&r.amd?r(function(){return s}):this.xorshift7=s})(Wi,typeof oa=="object"&&oa,typeof define==
"function"&&define)});var Ki=me((ji,fa)=>{(function(t,e,r){function n(i){var o=this;o.next=function(){var c=o.w,u=o.X,h=o.i,l,p;return o.w=c=c+
1640531527|0,p=u[h+34&127],l=u[h=h+1&127],p^=p<<13,l^=l<<17,p^=p>>>15,l^=l>>>12,p=u[h]=p^l,o.i=h,p+(c^c>>>16)|0};function f(c,u){
var h,l,p,x,g,y=[],C=128;for(u===(u|0)?(l=u,u=null):(u=u+"\0",l=0,C=Math.max(C,u.length)),p=0,x=-32;x<C;++x)u&&(l^=u.charCodeAt(
(x+32)%u.length)),x===0&&(g=l),l^=l<<10,l^=l>>>15,l^=l<<4,l^=l>>>13,x>=0&&(g=g+1640531527|0,h=y[x&127]^=l+g,p=h==0?p+1:0);
for(p>=128&&(y[(u&&u.length||0)&127]=-1),p=127,x=512;x>0;--x)l=y[p+34&127],h=y[p=p+1&127],l^=l<<13,h^=h<<17,l^=l>>>15,h^=
h>>>12,y[p]=l^h;c.w=g,c.X=y,c.i=p}f(o,i)}function a(i,o){return o.i=i.i,o.w=i.w,o.X=i.X.slice(),o}function s(i,o){i==null&&
(i=+new Date);var f=new n(i),c=o&&o.state,u=function(){return(f.next()>>>0)/4294967296};return u.double=function(){do var h=f.
next()>>>11,l=(f.next()>>>0)/4294967296,p=(h+l)/(1<<21);while(p===0);return p},u.int32=f.next,u.quick=u,c&&(c.X&&a(c,f),
u.state=function(){return a(f,{})}),u}e&&e.exports?e.exports=s:r&&r.amd?r(function(){return s}):this.xor4096=s})(ji,typeof fa==
"object"&&fa,typeof define=="function"&&define)});var Xi=me(($i,ca)=>{(function(t,e,r){function n(i){var o=this,f="";o.next=function(){var u=o.b,h=o.c,l=o.d,p=o.a;return u=
u<<25^u>>>7^h,h=h-l|0,l=l<<24^l>>>8^p,p=p-u|0,o.b=u=u<<20^u>>>12^h,o.c=h=h-l|0,o.d=l<<16^h>>>16^p,o.a=p-u|0},o.a=0,o.b=0,
o.c=-1640531527,o.d=1367130551,i===Math.floor(i)?(o.a=i/4294967296|0,o.b=i|0):f+=i;for(var c=0;c<f.length+20;c++)o.b^=f.
charCodeAt(c)|0,o.next()}function a(i,o){return o.a=i.a,o.b=i.b,o.c=i.c,o.d=i.d,o}function s(i,o){var f=new n(i),c=o&&o.
state,u=function(){return(f.next()>>>0)/4294967296};return u.double=function(){do var h=f.next()>>>11,l=(f.next()>>>0)/4294967296,
p=(h+l)/(1<<21);while(p===0);return p},u.int32=f.next,u.quick=u,c&&(typeof c=="object"&&a(c,f),u.state=function(){return a(
f,{})}),u}e&&e.exports?e.exports=s:r&&r.amd?r(function(){return s}):this.tychei=s})($i,typeof ca=="object"&&ca,typeof define==
"function"&&define)});var Yi=me(()=>{});var Zi=me((qi,Or)=>{(function(t,e,r){var n=256,a=6,s=52,i="random",o=r.pow(n,a),f=r.pow(2,s),c=f*2,u=n-1,h;function l(v,T,S){
var d=[];T=T==!0?{entropy:!0}:T||{};var R=y(g(T.entropy?[v,M(e)]:v??C(),3),d),w=new p(d),L=function(){for(var O=w.g(a),D=o,
m=0;O<f;)O=(O+m)*n,D*=n,m=w.g(1);for(;O>=c;)O/=2,D/=2,m>>>=1;return(O+m)/D};return L.int32=function(){return w.g(4)|0},L.
quick=function(){return w.g(4)/4294967296},L.double=L,y(M(w.S),e),(T.pass||S||function(O,D,m,V){return V&&(V.S&&x(V,w),O.
state=function(){return x(w,{})}),m?(r[i]=O,D):O})(L,R,"global"in T?T.global:this==r,T.state)}function p(v){var T,S=v.length,
d=this,R=0,w=d.i=d.j=0,L=d.S=[];for(S||(v=[S++]);R<n;)L[R]=R++;for(R=0;R<n;R++)L[R]=L[w=u&w+v[R%S]+(T=L[R])],L[w]=T;(d.g=
function(O){for(var D,m=0,V=d.i,F=d.j,G=d.S;O--;)D=G[V=u&V+1],m=m*n+G[u&(G[V]=G[F=u&F+D])+(G[F]=D)];return d.i=V,d.j=F,m})(
n)}function x(v,T){return T.i=v.i,T.j=v.j,T.S=v.S.slice(),T}function g(v,T){var S=[],d=typeof v,R;if(T&&d=="object")for(R in v)
try{S.push(g(v[R],T-1))}catch{}return S.length?S:d=="string"?v:v+"\0"}function y(v,T){for(var S=v+"",d,R=0;R<S.length;)T[u&
R]=u&(d^=T[u&R]*19)+S.charCodeAt(R++);return M(T)}function C(){try{var v;return h&&(v=h.randomBytes)?v=v(n):(v=new Uint8Array(
n),(t.crypto||t.msCrypto).getRandomValues(v)),M(v)}catch{var T=t.navigator,S=T&&T.plugins;return[+new Date,t,S,t.screen,
M(e)]}}function M(v){return String.fromCharCode.apply(0,v)}if(y(r.random(),e),typeof Or=="object"&&Or.exports){Or.exports=
l;try{h=Yi()}catch{}}else typeof define=="function"&&define.amd?define(function(){return l}):r["seed"+i]=l})(typeof self<
"u"?self:qi,[],Math)});var Ji=me((cS,Qi)=>{var p1=Ui(),v1=ki(),T1=Hi(),y1=Ai(),x1=Ki(),C1=Xi(),rt=Zi();rt.alea=p1;rt.xor128=v1;rt.xorwow=T1;rt.
xorshift7=y1;rt.xor4096=x1;rt.tychei=C1;Qi.exports=rt});var Fc=me((_c,mc)=>{(function(t){if(typeof _c=="object")mc.exports=t();else if(typeof define=="function"&&define.amd)define(
t);else{var e;try{e=window}catch{e=self}e.SparkMD5=t()}})(function(t){"use strict";var e=function(C,M){return C+M&4294967295},
r=["0","1","2","3","4","5","6","7","8","9","a","b","c","d","e","f"];function n(C,M,v,T,S,d){return M=e(e(M,C),e(T,d)),e(
M<<S|M>>>32-S,v)}function a(C,M){var v=C[0],T=C[1],S=C[2],d=C[3];v+=(T&S|~T&d)+M[0]-680876936|0,v=(v<<7|v>>>25)+T|0,d+=(v&
T|~v&S)+M[1]-389564586|0,d=(d<<12|d>>>20)+v|0,S+=(d&v|~d&T)+M[2]+606105819|0,S=(S<<17|S>>>15)+d|0,T+=(S&d|~S&v)+M[3]-1044525330|
0,T=(T<<22|T>>>10)+S|0,v+=(T&S|~T&d)+M[4]-176418897|0,v=(v<<7|v>>>25)+T|0,d+=(v&T|~v&S)+M[5]+1200080426|0,d=(d<<12|d>>>20)+
v|0,S+=(d&v|~d&T)+M[6]-1473231341|0,S=(S<<17|S>>>15)+d|0,T+=(S&d|~S&v)+M[7]-45705983|0,T=(T<<22|T>>>10)+S|0,v+=(T&S|~T&d)+
M[8]+1770035416|0,v=(v<<7|v>>>25)+T|0,d+=(v&T|~v&S)+M[9]-1958414417|0,d=(d<<12|d>>>20)+v|0,S+=(d&v|~d&T)+M[10]-42063|0,S=
(S<<17|S>>>15)+d|0,T+=(S&d|~S&v)+M[11]-1990404162|0,T=(T<<22|T>>>10)+S|0,v+=(T&S|~T&d)+M[12]+1804603682|0,v=(v<<7|v>>>25)+
T|0,d+=(v&T|~v&S)+M[13]-40341101|0,d=(d<<12|d>>>20)+v|0,S+=(d&v|~d&T)+M[14]-1502002290|0,S=(S<<17|S>>>15)+d|0,T+=(S&d|~S&
v)+M[15]+1236535329|0,T=(T<<22|T>>>10)+S|0,v+=(T&d|S&~d)+M[1]-165796510|0,v=(v<<5|v>>>27)+T|0,d+=(v&S|T&~S)+M[6]-1069501632|
0,d=(d<<9|d>>>23)+v|0,S+=(d&T|v&~T)+M[11]+643717713|0,S=(S<<14|S>>>18)+d|0,T+=(S&v|d&~v)+M[0]-373897302|0,T=(T<<20|T>>>12)+
S|0,v+=(T&d|S&~d)+M[5]-701558691|0,v=(v<<5|v>>>27)+T|0,d+=(v&S|T&~S)+M[10]+38016083|0,d=(d<<9|d>>>23)+v|0,S+=(d&T|v&~T)+
M[15]-660478335|0,S=(S<<14|S>>>18)+d|0,T+=(S&v|d&~v)+M[4]-405537848|0,T=(T<<20|T>>>12)+S|0,v+=(T&d|S&~d)+M[9]+568446438|
0,v=(v<<5|v>>>27)+T|0,d+=(v&S|T&~S)+M[14]-1019803690|0,d=(d<<9|d>>>23)+v|0,S+=(d&T|v&~T)+M[3]-187363961|0,S=(S<<14|S>>>18)+
d|0,T+=(S&v|d&~v)+M[8]+1163531501|0,T=(T<<20|T>>>12)+S|0,v+=(T&d|S&~d)+M[13]-1444681467|0,v=(v<<5|v>>>27)+T|0,d+=(v&S|T&
~S)+M[2]-51403784|0,d=(d<<9|d>>>23)+v|0,S+=(d&T|v&~T)+M[7]+1735328473|0,S=(S<<14|S>>>18)+d|0,T+=(S&v|d&~v)+M[12]-1926607734|
0,T=(T<<20|T>>>12)+S|0,v+=(T^S^d)+M[5]-378558|0,v=(v<<4|v>>>28)+T|0,d+=(v^T^S)+M[8]-2022574463|0,d=(d<<11|d>>>21)+v|0,S+=
(d^v^T)+M[11]+1839030562|0,S=(S<<16|S>>>16)+d|0,T+=(S^d^v)+M[14]-35309556|0,T=(T<<23|T>>>9)+S|0,v+=(T^S^d)+M[1]-1530992060|
0,v=(v<<4|v>>>28)+T|0,d+=(v^T^S)+M[4]+1272893353|0,d=(d<<11|d>>>21)+v|0,S+=(d^v^T)+M[7]-155497632|0,S=(S<<16|S>>>16)+d|0,
T+=(S^d^v)+M[10]-1094730640|0,T=(T<<23|T>>>9)+S|0,v+=(T^S^d)+M[13]+681279174|0,v=(v<<4|v>>>28)+T|0,d+=(v^T^S)+M[0]-358537222|
0,d=(d<<11|d>>>21)+v|0,S+=(d^v^T)+M[3]-722521979|0,S=(S<<16|S>>>16)+d|0,T+=(S^d^v)+M[6]+76029189|0,T=(T<<23|T>>>9)+S|0,v+=
(T^S^d)+M[9]-640364487|0,v=(v<<4|v>>>28)+T|0,d+=(v^T^S)+M[12]-421815835|0,d=(d<<11|d>>>21)+v|0,S+=(d^v^T)+M[15]+530742520|
0,S=(S<<16|S>>>16)+d|0,T+=(S^d^v)+M[2]-995338651|0,T=(T<<23|T>>>9)+S|0,v+=(S^(T|~d))+M[0]-198630844|0,v=(v<<6|v>>>26)+T|
0,d+=(T^(v|~S))+M[7]+1126891415|0,d=(d<<10|d>>>22)+v|0,S+=(v^(d|~T))+M[14]-1416354905|0,S=(S<<15|S>>>17)+d|0,T+=(d^(S|~v))+
M[5]-57434055|0,T=(T<<21|T>>>11)+S|0,v+=(S^(T|~d))+M[12]+1700485571|0,v=(v<<6|v>>>26)+T|0,d+=(T^(v|~S))+M[3]-1894986606|
0,d=(d<<10|d>>>22)+v|0,S+=(v^(d|~T))+M[10]-1051523|0,S=(S<<15|S>>>17)+d|0,T+=(d^(S|~v))+M[1]-2054922799|0,T=(T<<21|T>>>11)+
S|0,v+=(S^(T|~d))+M[8]+1873313359|0,v=(v<<6|v>>>26)+T|0,d+=(T^(v|~S))+M[15]-30611744|0,d=(d<<10|d>>>22)+v|0,S+=(v^(d|~T))+
M[6]-1560198380|0,S=(S<<15|S>>>17)+d|0,T+=(d^(S|~v))+M[13]+1309151649|0,T=(T<<21|T>>>11)+S|0,v+=(S^(T|~d))+M[4]-145523070|
0,v=(v<<6|v>>>26)+T|0,d+=(T^(v|~S))+M[11]-1120210379|0,d=(d<<10|d>>>22)+v|0,S+=(v^(d|~T))+M[2]+718787259|0,S=(S<<15|S>>>
17)+d|0,T+=(d^(S|~v))+M[9]-343485551|0,T=(T<<21|T>>>11)+S|0,C[0]=v+C[0]|0,C[1]=T+C[1]|0,C[2]=S+C[2]|0,C[3]=d+C[3]|0}function s(C){
var M=[],v;for(v=0;v<64;v+=4)M[v>>2]=C.charCodeAt(v)+(C.charCodeAt(v+1)<<8)+(C.charCodeAt(v+2)<<16)+(C.charCodeAt(v+3)<<
24);return M}function i(C){var M=[],v;for(v=0;v<64;v+=4)M[v>>2]=C[v]+(C[v+1]<<8)+(C[v+2]<<16)+(C[v+3]<<24);return M}function o(C){
var M=C.length,v=[1732584193,-271733879,-1732584194,271733878],T,S,d,R,w,L;for(T=64;T<=M;T+=64)a(v,s(C.substring(T-64,T)));
for(C=C.substring(T-64),S=C.length,d=[0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0],T=0;T<S;T+=1)d[T>>2]|=C.charCodeAt(T)<<(T%4<<3);if(d[T>>
2]|=128<<(T%4<<3),T>55)for(a(v,d),T=0;T<16;T+=1)d[T]=0;return R=M*8,R=R.toString(16).match(/(.*?)(.{0,8})$/),w=parseInt(
R[2],16),L=parseInt(R[1],16)||0,d[14]=w,d[15]=L,a(v,d),v}function f(C){var M=C.length,v=[1732584193,-271733879,-1732584194,
271733878],T,S,d,R,w,L;for(T=64;T<=M;T+=64)a(v,i(C.subarray(T-64,T)));for(C=T-64<M?C.subarray(T-64):new Uint8Array(0),S=
C.length,d=[0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0],T=0;T<S;T+=1)d[T>>2]|=C[T]<<(T%4<<3);if(d[T>>2]|=128<<(T%4<<3),T>55)for(a(v,
d),T=0;T<16;T+=1)d[T]=0;return R=M*8,R=R.toString(16).match(/(.*?)(.{0,8})$/),w=parseInt(R[2],16),L=parseInt(R[1],16)||0,
d[14]=w,d[15]=L,a(v,d),v}function c(C){var M="",v;for(v=0;v<4;v+=1)M+=r[C>>v*8+4&15]+r[C>>v*8&15];return M}function u(C){
var M;for(M=0;M<C.length;M+=1)C[M]=c(C[M]);return C.join("")}u(o("hello"))!=="5d41402abc4b2a76b9719d911017c592"&&(e=function(C,M){
var v=(C&65535)+(M&65535),T=(C>>16)+(M>>16)+(v>>16);return T<<16|v&65535}),typeof ArrayBuffer<"u"&&!ArrayBuffer.prototype.
slice&&(function(){function C(M,v){return M=M|0||0,M<0?Math.max(M+v,0):Math.min(M,v)}ArrayBuffer.prototype.slice=function(M,v){
var T=this.byteLength,S=C(M,T),d=T,R,w,L,O;return v!==t&&(d=C(v,T)),S>d?new ArrayBuffer(0):(R=d-S,w=new ArrayBuffer(R),L=
new Uint8Array(w),O=new Uint8Array(this,S,R),L.set(O),w)}})();function h(C){return/[\u0080-\uFFFF]/.test(C)&&(C=unescape(
encodeURIComponent(C))),C}function l(C,M){var v=C.length,T=new ArrayBuffer(v),S=new Uint8Array(T),d;for(d=0;d<v;d+=1)S[d]=
C.charCodeAt(d);return M?S:T}function p(C){return String.fromCharCode.apply(null,new Uint8Array(C))}function x(C,M,v){var T=new Uint8Array(
C.byteLength+M.byteLength);return T.set(new Uint8Array(C)),T.set(new Uint8Array(M),C.byteLength),v?T:T.buffer}function g(C){
var M=[],v=C.length,T;for(T=0;T<v-1;T+=2)M.push(parseInt(C.substr(T,2),16));return String.fromCharCode.apply(String,M)}function y(){
this.reset()}return y.prototype.append=function(C){return this.appendBinary(h(C)),this},y.prototype.appendBinary=function(C){
this._buff+=C,this._length+=C.length;var M=this._buff.length,v;for(v=64;v<=M;v+=64)a(this._hash,s(this._buff.substring(v-
64,v)));return this._buff=this._buff.substring(v-64),this},y.prototype.end=function(C){var M=this._buff,v=M.length,T,S=[
0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0],d;for(T=0;T<v;T+=1)S[T>>2]|=M.charCodeAt(T)<<(T%4<<3);return this._finish(S,v),d=u(this.
_hash),C&&(d=g(d)),this.reset(),d},y.prototype.reset=function(){return this._buff="",this._length=0,this._hash=[1732584193,
-271733879,-1732584194,271733878],this},y.prototype.getState=function(){return{buff:this._buff,length:this._length,hash:this.
_hash.slice()}},y.prototype.setState=function(C){return this._buff=C.buff,this._length=C.length,this._hash=C.hash,this},
y.prototype.destroy=function(){delete this._hash,delete this._buff,delete this._length},y.prototype._finish=function(C,M){
var v=M,T,S,d;if(C[v>>2]|=128<<(v%4<<3),v>55)for(a(this._hash,C),v=0;v<16;v+=1)C[v]=0;T=this._length*8,T=T.toString(16).
match(/(.*?)(.{0,8})$/),S=parseInt(T[2],16),d=parseInt(T[1],16)||0,C[14]=S,C[15]=d,a(this._hash,C)},y.hash=function(C,M){
return y.hashBinary(h(C),M)},y.hashBinary=function(C,M){var v=o(C),T=u(v);return M?g(T):T},y.ArrayBuffer=function(){this.
reset()},y.ArrayBuffer.prototype.append=function(C){var M=x(this._buff.buffer,C,!0),v=M.length,T;for(this._length+=C.byteLength,
T=64;T<=v;T+=64)a(this._hash,i(M.subarray(T-64,T)));return this._buff=T-64<v?new Uint8Array(M.buffer.slice(T-64)):new Uint8Array(
0),this},y.ArrayBuffer.prototype.end=function(C){var M=this._buff,v=M.length,T=[0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0],S,d;for(S=
0;S<v;S+=1)T[S>>2]|=M[S]<<(S%4<<3);return this._finish(T,v),d=u(this._hash),C&&(d=g(d)),this.reset(),d},y.ArrayBuffer.prototype.
reset=function(){return this._buff=new Uint8Array(0),this._length=0,this._hash=[1732584193,-271733879,-1732584194,271733878],
this},y.ArrayBuffer.prototype.getState=function(){var C=y.prototype.getState.call(this);return C.buff=p(C.buff),C},y.ArrayBuffer.
prototype.setState=function(C){return C.buff=l(C.buff,!0),y.prototype.setState.call(this,C)},y.ArrayBuffer.prototype.destroy=
y.prototype.destroy,y.ArrayBuffer.prototype._finish=y.prototype._finish,y.ArrayBuffer.hash=function(C,M){var v=f(new Uint8Array(
C)),T=u(v);return M?g(T):T},y})});function V0(t){let e=atob(t),r=new Uint8Array(e.length);for(let n=0;n<e.length;++n)r[n]=e.charCodeAt(n);return r}function B0(t,e){
let r=e;return(n,a)=>{let s=a*n.BYTES_PER_ELEMENT,i=t.slice(r,r+s);return r+=s,new n(i.buffer)}}var Ts={rr:0,tt:1,zz:2,rt:3,
tz:4,rz:5},U0={r:0,t:1,z:2};function G0(t,e,r){let n={load:e.load,stress:[],movement:[],spread:null};return e.names.forEach(
(a,s)=>{let i=t(Int16Array,r),o=Float32Array.from(i,f=>f*e.steps[s]);a in Ts?n.stress[Ts[a]]=o:n.movement[U0[a]]=o}),n}function k0(t,e){
let r=e.points,n=(s,i)=>Float32Array.from(t(Int16Array,s),o=>o*i),a={...e,place:n(3*r,e.place_step)};return a.loads=e.steps.
map(s=>({von_mises:n(r,s.von_mises),principal:n(r,s.principal),shear:n(r,s.shear),moved:n(3*r,s.movement)})),a.middle=t(
Uint16Array,2*(r-e.corners)),a.element=t(Uint16Array,4*e.elements),a.edge=t(Uint16Array,2*e.edges),a.sides=t(Uint8Array,
e.elements),a.z=Float32Array.from({length:r},(s,i)=>a.place[3*i+2]),a.r=Float32Array.from({length:r},(s,i)=>Math.hypot(a.
place[3*i],a.place[3*i+1])),a}function z0(t,e,r){if(e.solid)return k0(t,e);let n=e.points,a={...e,z:t(Float32Array,n),r:t(
Float32Array,n)};return a.fields=e.fields.map(s=>G0(t,s,n)),a.fields.forEach((s,i)=>{let o=e.fields[i].spread;s.spread=Float32Array.
from(t(Uint8Array,n),f=>f===255?0:o*2**(-f/r))}),a.part=t(Uint8Array,e.triangles),a.triangle=t(Uint16Array,3*e.triangles),
a.skin=t(Uint16Array,2*e.skin),a.outline=t(Uint16Array,2*e.outline),a.unfused=t(Uint16Array,2*e.unfused),a}function ys(t){
let e=V0(t),r=new DataView(e.buffer).getUint32(0,!0),n=JSON.parse(new TextDecoder().decode(e.subarray(4,4+r))),a=B0(e,4+
r);return{...n,scenarios:n.scenarios.map(s=>z0(a,s,n.spread_step))}}var xs=Object.defineProperty,Bn=(t,e)=>{let r={};for(var n in t)xs(r,n,{get:t[n],enumerable:!0});return e||xs(r,Symbol.toStringTag,
{value:"Module"}),r};var Cs={vtkObject:()=>null};function le(t){if(t==null||t.isA)return t;if(!t.vtkClass)return globalThis.console&&globalThis.
console.error&&globalThis.console.error("Invalid VTK object"),null;let e=Cs[t.vtkClass];if(!e)return globalThis.console&&
globalThis.console.error&&globalThis.console.error(`No vtk class found for Object of type ${t.vtkClass}`),null;let r={...t};
Object.keys(r).forEach(a=>{r[a]&&typeof r[a]=="object"&&r[a].vtkClass&&(r[a]=le(r[a]))});let n=e(r);return n&&n.modified&&
n.modified(),n}function H0(t,e){Cs[t]=e}le.register=H0;var gr=class extends Array{push(){for(let t=0;t<arguments.length;t++)this.includes(arguments[t])||super.push(arguments[t]);
return this.length}};var Os=ur(Un(),1),Xe=Bn({EVENT_ABORT:()=>Hn,TYPED_ARRAYS:()=>fe,VOID:()=>Ds,_capitalize:()=>te,algo:()=>As,capitalize:()=>xr,
chain:()=>pt,debounce:()=>Ks,default:()=>E,event:()=>js,formatBytesToProperUnit:()=>Gs,formatNumbersWithThousandSeparator:()=>ks,
get:()=>Se,getArray:()=>tt,isVtkObject:()=>Wn,keystore:()=>An,measurePromiseExecution:()=>Hs,moveToProtected:()=>Ye,newInstance:()=>pe,
newTypedArray:()=>yr,newTypedArrayFrom:()=>Bs,normalizeWheel:()=>Zs,obj:()=>xe,proxy:()=>Xs,proxyPropertyMapping:()=>Ys,
proxyPropertyState:()=>qs,requiredParam:()=>Ls,set:()=>Ft,setArray:()=>zn,setGet:()=>Te,setGetArray:()=>Cr,setImmediateVTK:()=>kn,
setLoggerFunction:()=>ms,throttle:()=>$s,traverseInstanceTree:()=>vr,uncapitalize:()=>Us,vtkDebugMacro:()=>pr,vtkErrorMacro:()=>X,
vtkInfoMacro:()=>Ns,vtkLogMacro:()=>Fs,vtkOnceErrorMacro:()=>Vs,vtkWarningMacro:()=>Tr}),Gn=0,Ls=t=>{throw new Error(`Na\
med parameter '${t}' is missing`)},Ds=Symbol("void");function W0(){return Gn}var _s={};function et(){}["log","debug","in\
fo","warn","error","time","timeEnd","group","groupEnd"].forEach(t=>{_s[t]=et});var hr=globalThis.console&&globalThis.console.
hasOwnProperty("log")?globalThis.console:_s,$e={debug:et,error:hr.error||et,info:hr.info||et,log:hr.log||et,warn:hr.warn||
et};function ms(t,e){$e[t]&&($e[t]=e||et)}function Fs(...t){$e.log(...t)}function Ns(...t){$e.info(...t)}function pr(...t){
$e.debug(...t)}function X(...t){$e.error(...t)}function Tr(...t){$e.warn(...t)}var Ms={};function Vs(t){Ms[t]||($e.error(
t),Ms[t]=!0)}var fe=Object.create(null);fe.Float32Array=Float32Array;fe.Float64Array=Float64Array;fe.Uint8Array=Uint8Array;
fe.Int8Array=Int8Array;fe.Uint16Array=Uint16Array;fe.Int16Array=Int16Array;fe.Uint32Array=Uint32Array;fe.Int32Array=Int32Array;
fe.Uint8ClampedArray=Uint8ClampedArray;try{fe.BigInt64Array=BigInt64Array,fe.BigUint64Array=BigUint64Array}catch{}function yr(t,...e){
return new(fe[t]||Float64Array)(...e)}function Bs(t,...e){return(fe[t]||Float64Array).from(...e)}function xr(t){return t.
charAt(0).toUpperCase()+t.slice(1)}function te(t){return xr(t[0]==="_"?t.slice(1):t)}function Us(t){return t.charAt(0).toLowerCase()+
t.slice(1)}function Gs(t,e=2,r=1e3){let n=["TB","GB","MB","KB"],a=Number(t),s="B";for(;a>r;)a/=r,s=n.pop();return`${a.toFixed(
e)} ${s}`}function ks(t,e=" "){let r=[],n=t;for(;n>1e3;)r.push(`000${n%1e3}`.slice(-3)),n=Math.floor(n/1e3);return n>0&&
r.push(n),r.reverse(),r.join(e)}function zs(t){Object.keys(t).forEach(e=>{Array.isArray(t[e])&&(t[e]=[].concat(t[e]))})}
function A0(t){return Object.values(fe).some(e=>t instanceof e)}function j0(t,e){if(t===e)return!0;if(Array.isArray(t)&&
Array.isArray(e)){if(t.length!==e.length)return!1;for(let r=0;r<t.length;r++)if(t[r]!==e[r])return!1;return!0}return!1}function K0(t,e){
return Object.keys(t).find(r=>t[r]===e)}function kn(t){setTimeout(t,0)}function Hs(t,e){let r=performance.now();t.finally(
()=>{e(performance.now()-r)})}function xe(t={},e={}){zs(e);let r=[];if(Number.isInteger(e.mtime)||(e.mtime=++Gn),!("clas\
sHierarchy"in e))e.classHierarchy=new gr("vtkObject");else if(!(e.classHierarchy instanceof gr)){let s=new gr;for(let i=0;i<
e.classHierarchy.length;i++)s.push(e.classHierarchy[i]);e.classHierarchy=s}function n(s){r[s]=null}function a(s){function i(){
n(s)}return Object.freeze({unsubscribe:i})}return t.isDeleted=()=>!!e.deleted,t.modified=s=>{if(e.deleted){X("instance d\
eleted - cannot call any method");return}s&&s<t.getMTime()||(e.mtime=++Gn,r.forEach(i=>i&&i(t)))},t.onModified=s=>{if(e.
deleted)return X("instance deleted - cannot call any method"),null;let i=r.length;return r.push(s),a(i)},t.getMTime=()=>e.
mtime,t.isA=s=>{let i=e.classHierarchy.length;for(;i--;)if(e.classHierarchy[i]===s)return!0;return!1},t.getClassName=(s=0)=>e.
classHierarchy[e.classHierarchy.length-1-s],t.set=(s={},i=!1,o=!1)=>{let f=!1;return Object.keys(s).forEach(c=>{let u=o?
null:t[`set${xr(c)}`];u&&Array.isArray(s[c])&&u.length>1?f=u(...s[c])||f:u?f=u(s[c])||f:(["mtime"].indexOf(c)===-1&&!i&&
Tr(`Warning: Set value to model directly ${c}, ${s[c]}`),f=e[c]!==s[c]||f,e[c]=s[c])}),f},t.get=(...s)=>{if(!s.length)return e;
let i={};return s.forEach(o=>{i[o]=e[o]}),i},t.getReferenceByName=s=>e[s],t.delete=()=>{Object.keys(e).forEach(s=>delete e[s]),
r.forEach((s,i)=>n(i)),e.deleted=!0},t.getState=({preserveTypedArrays:s=!1}={})=>{if(e.deleted)return null;let i={preserveTypedArrays:s},
o={...e,vtkClass:t.getClassName()};Object.keys(o).forEach(c=>{o[c]===null||o[c]===void 0||c[0]==="_"?delete o[c]:o[c].isA?
o[c]=o[c].getState(i):Array.isArray(o[c])?o[c]=o[c].map(u=>u&&u.isA?u.getState(i):u):A0(o[c])&&(s||(o[c]=Array.from(o[c])))});
let f={};return Object.keys(o).sort().forEach(c=>{f[c]=o[c]}),f.mtime&&delete f.mtime,f},t.shallowCopy=(s,i=!1)=>{if(s.getClassName()!==
t.getClassName())throw new Error(`Cannot ShallowCopy ${s.getClassName()} into ${t.getClassName()}`);let o=s.get(),f=Object.
keys(e).sort();Object.keys(o).sort().forEach(c=>{let u=f.indexOf(c);u===-1?i&&pr(`add ${c} in shallowCopy`):f.splice(u,1),
e[c]=o[c]}),f.length&&i&&pr(`Untouched keys: ${f.join(", ")}`),t.modified()},t.toJSON=function(){return t.getState()},t}
var $0={object(t,e,r){return function(){return{...e[r.name]}}}};function Se(t,e,r){r.forEach(n=>{if(typeof n=="object"){
let a=$0[n.type];a?t[`get${te(n.name)}`]=a(t,e,n):t[`get${te(n.name)}`]=()=>e[n.name]}else t[`get${te(n)}`]=()=>e[n]})}var Ws={
enum(t,e,r){let n=`_on${te(r.name)}Changed`;return a=>{if(typeof a=="string"){if(r.enum[a]!==void 0)return e[r.name]!==r.
enum[a]?(e[r.name]=r.enum[a],t.modified(),!0):!1;throw X(`Set Enum with invalid argument ${r}, ${a}`),new RangeError("Se\
t Enum with invalid string argument")}if(typeof a=="number"){if(e[r.name]!==a){if(Object.keys(r.enum).map(s=>r.enum[s]).
indexOf(a)!==-1){let s=e[r.name];return e[r.name]=a,e[n]?.(t,e,a,s),t.modified(),!0}throw X(`Set Enum outside numeric ra\
nge ${r}, ${a}`),new RangeError("Set Enum outside numeric range")}return!1}throw X(`Set Enum with invalid argument (Stri\
ng/Number) ${r}, ${a}`),new TypeError("Set Enum with invalid argument (String/Number)")}},object(t,e,r){r.params?.length===
1&&Tr('Setter of type "object" with a single "param" field is not supported');let n=`_on${te(r.name)}Changed`;return(...a)=>{
let s;if(a.length>1&&r.params?.length?s=r.params.reduce((i,o,f)=>Object.assign(i,{[o]:a[f]}),{}):s=a[0],!(0,Os.default)(
e[r.name],s)){let i=e[r.name];return e[r.name]=s,e[n]?.(t,e,s,i),t.modified(),!0}return!1}}};function ds(t){if(typeof t==
"object"){let e=Ws[t.type];if(e)return(r,n)=>e(r,n,t);throw X(`No setter for field ${t}`),new TypeError("No setter for f\
ield")}return function(r,n){let a=`_on${te(t)}Changed`;return function(i){if(n.deleted)return X("instance deleted - cann\
ot call any method"),!1;if(n[t]!==i){let o=n[t.name];return n[t]=i,n[a]?.(r,n,i,o),r.modified(),!0}return!1}}}function Ft(t,e,r){
r.forEach(n=>{typeof n=="object"?t[`set${te(n.name)}`]=ds(n)(t,e):t[`set${te(n)}`]=ds(n)(t,e)})}function Te(t,e,r){Se(t,
e,r),Ft(t,e,r)}function tt(t,e,r){r.forEach(n=>{t[`get${te(n)}`]=()=>e[n]?Array.from(e[n]):e[n],t[`get${te(n)}ByReferenc\
e`]=()=>e[n]})}function zn(t,e,r,n,a=void 0){r.forEach(s=>{if(e[s]&&n&&e[s].length!==n)throw new RangeError(`Invalid ini\
tial number of values for array (${s})`);let i=`_on${te(s)}Changed`;t[`set${te(s)}`]=(...o)=>{if(e.deleted)return X("ins\
tance deleted - cannot call any method"),!1;let f=o,c,u=!1;if(f.length===1&&(f[0]==null||f[0].length>=0)&&(f=f[0],u=!0),
f==null)c=e[s]!==f;else{if(n&&f.length!==n)if(f.length<n&&a!==void 0)for(f=Array.from(f),u=!1;f.length<n;)f.push(a);else
throw new RangeError(`Invalid number of values for array setter (${s})`);c=e[s]==null||e[s].length!==f.length;for(let h=0;!c&&
h<f.length;++h)c=e[s][h]!==f[h];c&&u&&(f=Array.from(f))}if(c){let h=e[s.name];e[s]=f,e[i]?.(t,e,f,h),t.modified()}return c},
t[`set${te(s)}From`]=o=>{let f=e[s];o.forEach((c,u)=>{f[u]=c})}})}function Cr(t,e,r,n,a=void 0){tt(t,e,r),zn(t,e,r,n,a)}
function Ye(t,e,r){for(let n=0;n<r.length;n++){let a=r[n];e[a]!==void 0&&(e[`_${a}`]=e[a],delete e[a])}}function As(t,e,r,n){
e.inputData?e.inputData=e.inputData.map(le):e.inputData=[],e.inputConnection?e.inputConnection=e.inputConnection.map(le):
e.inputConnection=[],e.output?e.output=e.output.map(le):e.output=[],e.inputArrayToProcess?e.inputArrayToProcess=e.inputArrayToProcess.
map(le):e.inputArrayToProcess=[],e.numberOfInputs=r;function a(p,x=0){if(e.deleted){X("instance deleted - cannot call an\
y method");return}if(x>=e.numberOfInputs){X(`algorithm ${t.getClassName()} only has ${e.numberOfInputs} input ports. To \
add more input ports, use addInputData()`);return}(e.inputData[x]!==p||e.inputConnection[x])&&(e.inputData[x]=p,e.inputConnection[x]=
null,t.modified&&t.modified())}function s(p=0){return e.inputConnection[p]&&(e.inputData[p]=e.inputConnection[p]()),e.inputData[p]}
function i(p,x=0){if(e.deleted){X("instance deleted - cannot call any method");return}if(x>=e.numberOfInputs){let g=`alg\
orithm ${t.getClassName()} only has `;g+=`${e.numberOfInputs}`,g+=" input ports. To add more input ports, use addInputCo\
nnection()",X(g);return}e.inputData[x]=null,e.inputConnection[x]=p}function o(p=0){return e.inputConnection[p]}function f(){
let p=e.numberOfInputs;for(;p&&!e.inputData[p-1]&&!e.inputConnection[p-1];)p--;return p===e.numberOfInputs&&e.numberOfInputs++,
p}function c(p){if(e.deleted){X("instance deleted - cannot call any method");return}i(p,f())}function u(p){if(e.deleted){
X("instance deleted - cannot call any method");return}a(p,f())}function h(p=0){return e.deleted?(X("instance deleted - c\
annot call any method"),null):(t.shouldUpdate()&&t.update(),e.output[p])}t.shouldUpdate=()=>{let p=t.getMTime(),x=1/0,g=n;
for(;g--;){if(!e.output[g]||e.output[g].isDeleted())return!0;let y=e.output[g].getMTime();if(y<p)return!0;y<x&&(x=y)}for(g=
e.numberOfInputs;g--;)if(e.inputConnection[g]?.filter.shouldUpdate()||t.getInputData(g)?.getMTime()>x)return!0;return!1};
function l(p=0){let x=()=>h(p);return x.filter=t,x}if(e.numberOfInputs){let p=e.numberOfInputs;for(;p--;)e.inputData.push(
null),e.inputConnection.push(null);t.setInputData=a,t.setInputConnection=i,t.addInputData=u,t.addInputConnection=c,t.getInputData=
s,t.getInputConnection=o}n&&(t.getOutputData=h,t.getOutputPort=l),t.update=()=>{let p=[];if(e.numberOfInputs){let x=0;for(;x<
e.numberOfInputs;)p[x]=t.getInputData(x),x++}t.requestData&&!t.isDeleted()&&t.shouldUpdate()&&t.requestData(p,e.output)},
t.getNumberOfInputPorts=()=>e.numberOfInputs,t.getNumberOfOutputPorts=()=>n||e.output.length,t.getInputArrayToProcess=p=>{
let x=e.inputArrayToProcess[p],g=e.inputData[p];return x&&g?g[`get${x.fieldAssociation}`]().getArray(x.arrayName):null},
t.setInputArrayToProcess=(p,x,g,y="Scalars")=>{for(;e.inputArrayToProcess.length<p;)e.inputArrayToProcess.push(null);e.inputArrayToProcess[p]=
{arrayName:x,fieldAssociation:g,attributeType:y}}}var Hn=Symbol("Event abort");function js(t,e,r){let n=[],a=t.delete,s=1;
function i(c){for(let u=0;u<n.length;++u){let[h]=n[u];if(h===c){n.splice(u,1);return}}}function o(c){function u(){i(c)}return Object.
freeze({unsubscribe:u})}function f(){if(e.deleted){X("instance deleted - cannot call any method");return}let c=n.slice();
for(let u=0;u<c.length;++u){let[,h,l]=c[u];if(h){if(l<0)setTimeout(()=>h.apply(t,arguments),1-l);else if(h.apply(t,arguments)===
Hn)break}}}t[`invoke${te(r)}`]=f,t[`on${te(r)}`]=(c,u=0)=>{if(!c.apply)return console.error(`Invalid callback for event ${r}`),
null;if(e.deleted)return X("instance deleted - cannot call any method"),null;let h=s++;return n.push([h,c,u]),n.sort((l,p)=>p[2]-
l[2]),o(h)},t.delete=()=>{a(),n.forEach(([c])=>i(c))}}function pe(t,e){let r=(n={})=>{let a={},s={};return t(s,a,n),Object.
freeze(s)};return e&&le.register(e,r),r}function pt(...t){return(...e)=>t.filter(r=>!!r).map(r=>r(...e))}function Wn(t){
return t&&t.isA&&t.isA("vtkObject")}function vr(t,e,r=[],n=[]){if(Wn(t)){if(n.indexOf(t)>=0)return r;n.push(t);let a=e(t);
a!==void 0&&r.push(a);let s=t.get();Object.keys(s).forEach(i=>{let o=s[i];Array.isArray(o)?o.forEach(f=>{vr(f,e,r,n)}):vr(
o,e,r,n)})}return r}function Ks(t,e,r){let n,a=(...s)=>{let i=this,o=()=>{n=null,r||t.apply(i,s)},f=r&&!n;clearTimeout(n),
n=setTimeout(o,e),f&&t.apply(i,s)};return a.cancel=()=>clearTimeout(n),a}function $s(t,e){let r=!1,n=null;function a(){r=
!1,n!==null&&(s(...n),n=null)}function s(...i){if(r){n=i;return}r=!0,t(...i),setTimeout(a,e)}return s}function An(t,e,r={}){
e.keystore=Object.assign(e.keystore||{},r),t.setKey=(n,a)=>{e.keystore[n]=a},t.getKey=n=>e.keystore[n],t.getAllKeys=()=>Object.
keys(e.keystore),t.deleteKey=n=>delete e.keystore[n],t.clearKeystore=()=>t.getAllKeys().forEach(n=>delete e.keystore[n])}
var X0=1,lr="__root__";function Xs(t,e){An(t,e);let r=t.delete;e.proxyId=`${X0++}`,e.ui=JSON.parse(JSON.stringify(e.ui||
[])),Se(t,e,["proxyId","proxyGroup","proxyName"]),Te(t,e,["proxyManager"]);let n={},a={};function s(c,u){a[u]||(a[u]=[]);
let h=a[u];for(let l=0;l<c.length;l++)h.push(c[l].name),n[c[l].name]=c[l],c[l].children&&c[l].children.length&&s(c[l].children,
c[l].name)}s(e.ui,lr),t.updateUI=c=>{e.ui=JSON.parse(JSON.stringify(c||[])),Object.keys(n).forEach(u=>delete n[u]),Object.
keys(a).forEach(u=>delete a[u]),s(e.ui,lr),t.modified()};function i(c=lr){return a[c]}t.updateProxyProperty=(c,u)=>{let h=n[c];
h?Object.assign(h,u):n[c]={...u}},t.activate=()=>{if(e.proxyManager){let c=`setActive${te(t.getProxyGroup().slice(0,-1))}`;
e.proxyManager[c]&&e.proxyManager[c](t)}},e.propertyLinkSubscribers={},t.registerPropertyLinkForGC=(c,u)=>{u in e.propertyLinkSubscribers||
(e.propertyLinkSubscribers[u]=[]),e.propertyLinkSubscribers[u].push(c)},t.gcPropertyLinks=c=>{let u=e.propertyLinkSubscribers[c]||
[];for(;u.length;)u.pop().unbind(t)},e.propertyLinkMap={},t.getPropertyLink=(c,u=!1)=>{if(e.propertyLinkMap[c])return e.
propertyLinkMap[c];let h=null,l=[],p=0,x=!1;function g(T,S=!1){if(x)return null;let d=[],R=null;for(p=l.length;p--;){let L=l[p];
L.instance===T?R=L:d.push(L)}if(!R)return null;let w=R.instance[`get${te(R.propertyName)}`]();if(!j0(w,h)||S){for(h=w,x=
!0;d.length;){let L=d.pop();L.instance.set({[L.propertyName]:h})}x=!1}return e.propertyLinkMap[c].persistent&&(e.propertyLinkMap[c].
value=w),w}function y(T,S){let d=[];for(p=l.length;p--;){let R=l[p];R.instance===T&&(R.propertyName===S||S===void 0)&&(R.
subscription.unsubscribe(),d.push(p))}for(;d.length;)l.splice(d.pop(),1)}function C(T,S,d=!1){let R=T.onModified(g),w=l[0];
return l.push({instance:T,propertyName:S,subscription:R}),d&&(e.propertyLinkMap[c].persistent&&e.propertyLinkMap[c].value!==
void 0?T.set({[S]:e.propertyLinkMap[c].value}):w&&g(w.instance,!0)),{unsubscribe:()=>y(T,S)}}function M(){for(;l.length;)
l.pop().subscription.unsubscribe()}let v={bind:C,unbind:y,unsubscribe:M,persistent:u};return e.propertyLinkMap[c]=v,v};function o(c=lr){
let u=[],h=e.proxyId,l=i(c)||[];for(let p=0;p<l.length;p++){let x=l[p],g=t[`get${te(x)}`],y={id:h,name:x,value:g?g():void 0},
C=o(x);C.length&&(y.children=C),u.push(y)}return u}t.listPropertyNames=()=>o().map(c=>c.name),t.getPropertyByName=c=>o().
find(u=>u.name===c),t.getPropertyDomainByName=c=>(n[c]||{}).domain,t.getProxySection=()=>({id:e.proxyId,name:e.proxyGroup,
ui:e.ui,properties:o()}),t.delete=()=>{let c=Object.keys(e.propertyLinkMap),u=c.length;for(;u--;)e.propertyLinkMap[c[u]].
unsubscribe();Object.keys(e.propertyLinkSubscribers).forEach(t.gcPropertyLinks),r()},t.getState=()=>null;function f(){if(e.
links)for(let c=0;c<e.links.length;c++){let{link:u,property:h,persistent:l,updateOnBind:p,type:x}=e.links[c];if(x==="app\
lication"){let g=e.proxyManager.getPropertyLink(u,l);t.registerPropertyLinkForGC(g,"application"),g.bind(t,h,p)}}}kn(f)}
function Ys(t,e,r){let n=t.delete,a=[],s=Object.keys(r),i=s.length;for(;i--;){let o=s[i],{modelKey:f,property:c,modified:u=!0}=r[o],
h=te(c),l=te(o);t[`get${l}`]=e[f][`get${h}`],t[`set${l}`]=e[f][`set${h}`],u&&a.push(e[f].onModified(t.modified))}t.delete=
()=>{for(;a.length;)a.pop().unsubscribe();n()}}function qs(t,e,r={},n={}){e.this=t;function a(o){let f=Object.keys(o),c=f.
length;for(;c--;){let u=f[c];e[u].set(o[u])}}let s=Object.keys(n),i=s.length;for(;i--;){let o=s[i];e[o]=n[o];let f=r[o];
t[`set${te(o)}`]=c=>{if(c!==e[o]){e[o]=c;let u=f[c];a(u),t.modified()}}}s.length&&Se(t,e,s)}var Es=10,Rs=40,ws=800;function Zs(t){
let e=0,r=0,n=0,a=0;return"detail"in t&&(r=t.detail),"wheelDelta"in t&&(r=-t.wheelDelta/120),"wheelDeltaY"in t&&(r=-t.wheelDeltaY/
120),"wheelDeltaX"in t&&(e=-t.wheelDeltaX/120),"axis"in t&&t.axis===t.HORIZONTAL_AXIS&&(e=r,r=0),n=e*Es,a=r*Es,"deltaY"in
t&&(a=t.deltaY),"deltaX"in t&&(n=t.deltaX),(n||a)&&t.deltaMode&&(t.deltaMode===1?(n*=Rs,a*=Rs):(n*=ws,a*=ws)),n&&!e&&(e=
n<1?-1:1),a&&!r&&(r=a<1?-1:1),{spinX:e,spinY:r||e,pixelX:n,pixelY:a||n}}var E={algo:As,capitalize:xr,chain:pt,debounce:Ks,
enumToString:K0,event:js,EVENT_ABORT:Hn,formatBytesToProperUnit:Gs,formatNumbersWithThousandSeparator:ks,get:Se,getArray:tt,
getCurrentGlobalMTime:W0,isVtkObject:Wn,keystore:An,measurePromiseExecution:Hs,moveToProtected:Ye,newInstance:pe,newTypedArray:yr,
newTypedArrayFrom:Bs,normalizeWheel:Zs,obj:xe,proxy:Xs,proxyPropertyMapping:Ys,proxyPropertyState:qs,safeArrays:zs,set:Ft,
setArray:zn,setGet:Te,setGetArray:Cr,setImmediate:kn,setLoggerFunction:ms,throttle:$s,traverseInstanceTree:vr,TYPED_ARRAYS:fe,
uncapitalize:Us,VOID:Ds,vtkDebugMacro:pr,vtkErrorMacro:X,vtkInfoMacro:Ns,vtkLogMacro:Fs,vtkOnceErrorMacro:Vs,vtkWarningMacro:Tr,
objectSetterMap:Ws,requiredParam:Ls};var{vtkErrorMacro:Y0}=E,q0=["Build","Render"];function Z0(t,e){e.classHierarchy.push("vtkViewNode");function r(a,s){let{
children:i}=e;if(a.end===void 0){a.start=i.lastIndexOf(s),a.end=a.start+1;return}if(i[a.end]===s){a.end++;return}let o=i.
indexOf(s,a.end+1);if(o<0&&(o=i.indexOf(s)),!(o>=a.start&&o<a.end)){if(a.end>=i.length){i.splice(o,1),i.push(s),a.start--;
return}i[o]=i[a.end],i[a.end]=s,a.end++}}t.build=a=>{},t.render=a=>{},t.traverse=a=>{let s=t[a.getTraverseOperation()];if(s){
s(a);return}t.apply(a,!0);for(let i=0;i<e.children.length;i++)e.children[i].traverse(a);t.apply(a,!1)},t.apply=(a,s)=>{let i=t[a.
getOperation()];i&&i(s,a)},t.getViewNodeFor=(a,s=null)=>{if(s&&s.renderable===a)return s;if(e.renderable===a)return t;for(let i=0;i<
e.children.length;++i){let o=e.children[i].getViewNodeFor(a);if(o)return o}},t.getFirstAncestorOfType=a=>e._parent?e._parent.
isA(a)?e._parent:e._parent.getFirstAncestorOfType(a):null,t.getLastAncestorOfType=a=>{if(!e._parent)return null;let s=e.
_parent.getLastAncestorOfType(a);return s||(e._parent.isA(a)?e._parent:null)},t.addMissingNode=a=>{if(!a)return;let s=e.
_renderableChildMap.get(a);if(s!==void 0)return s.setVisited(!0),s;let i=t.createViewNode(a);if(i)return i.setParent(t),
i.setVisited(!0),e._renderableChildMap.set(a,i),e.children.push(i),i},t.addMissingNodes=(a,s=!1)=>{if(!a||!a.length)return;
let i={};for(let o=0;o<a.length;++o){let f=a[o],c=t.addMissingNode(f);s&&c!==void 0&&r(i,c)}},t.addMissingChildren=a=>{if(!(!a||
!a.length))for(let s=0;s<a.length;++s){let i=a[s];if(e.children.indexOf(i)===-1){i.setParent(t),e.children.push(i);let o=i.
getRenderable();o&&e._renderableChildMap.set(o,i)}i.setVisited(!0)}},t.removeNode=a=>{let s=e.children.findIndex(o=>o===
a);if(s<0)return!1;let i=a.getRenderable();return i&&e._renderableChildMap.delete(i),a.delete(),e.children.splice(s,1),!0},
t.prepareNodes=()=>{for(let a=0;a<e.children.length;++a)e.children[a].setVisited(!1)},t.setVisited=a=>{e.visited=a},t.removeUnusedNodes=
()=>{let a=0;for(let s=0;s<e.children.length;++s){let i=e.children[s];if(i.getVisited())e.children[a++]=i,i.setVisited(!1);else{
let o=i.getRenderable();o&&e._renderableChildMap.delete(o),i.delete()}}e.children.length=a},t.createViewNode=a=>{if(!e.myFactory)
return Y0("Cannot create view nodes without my own factory"),null;let s=e.myFactory.createNode(a);return s&&s.setRenderable(
a),s};let n=t.delete;t.delete=()=>{for(let a=0;a<e.children.length;a++)e.children[a].delete();n()}}var Q0={renderable:null,
myFactory:null,children:[],visited:!1};function Qs(t,e,r={}){Object.assign(e,Q0,r),E.obj(t,e),E.event(t,e,"event"),e._renderableChildMap=
new Map,E.get(t,e,["visited"]),E.setGet(t,e,["_parent","renderable","myFactory"]),E.getArray(t,e,["children"]),E.moveToProtected(
t,e,["parent"]),Z0(t,e)}var we={newInstance:E.newInstance(Qs,"vtkViewNode"),extend:Qs,PASS_TYPES:q0};var{vtkWarningMacro:J0}=E;function I0(t){let e=[],r=0,n=t.getClassName(r++);for(;n;)e.push(n),n=t.getClassName(r++);return e}
function P0(t,e){let r=e.join(" \u2192 ");return[`No ${t} implementation found for ${e[0]}.`,`Class hierarchy: ${r}.`,`A\
 rendering Profile is likely missing for ${e[0]}.`,"Try importing '@kitware/vtk.js/Rendering/Profiles/All' or 'vtk.js/So\
urces/Rendering/Profiles/All',","or import the specific rendering profile needed by this renderable if known.","See http\
s://kitware.github.io/vtk-js/docs/concepts_profile.html for details."].join(`
`)}function b0(t){return t.includes("vtkAbstractWidget")||t.includes("vtkWidgetRepresentation")}function eg(t,e){e.overrides||
(e.overrides={}),e.classHierarchy.push("vtkViewNodeFactory"),t.createNode=r=>{if(r.isDeleted())return null;let n=I0(r),a=0,
s=n[a++],i=!1,o=Object.keys(e.overrides);for(;s&&!i;)o.indexOf(s)!==-1?i=!0:s=r.getClassName(a++);if(!i)return b0(n)||J0(
P0(t.getClassName(),n)),null;let f=e.overrides[s]();return f.setMyFactory(t),f}}var tg={};function Js(t,e,r={}){Object.assign(
e,tg,r),E.obj(t,e),eg(t,e)}var rg=E.newInstance(Js,"vtkViewNodeFactory"),Is={newInstance:rg,extend:Js};var Ps=Object.create(null);function Oe(t,e){Ps[t]=e}function ng(t,e){e.classHierarchy.push("vtkOpenGLViewNodeFactory")}var ag={};
function bs(t,e,r={}){Object.assign(e,ag,r),e.overrides=Ps,Is.extend(t,e,r),ng(t,e)}var sg=E.newInstance(bs,"vtkOpenGLVi\
ewNodeFactory"),ei={newInstance:sg,extend:bs};var W=1e-6,J=typeof Float32Array<"u"?Float32Array:Array,Le=Math.random;var $C=Math.PI/180;Math.hypot||(Math.hypot=function(){for(var t=0,e=arguments.length;e--;)t+=arguments[e]*arguments[e];return Math.sqrt(t)});var ce={};mt(ce,{add:()=>Dg,adjoint:()=>pg,clone:()=>og,copy:()=>fg,create:()=>jn,determinant:()=>vg,equals:()=>Ng,exactEquals:()=>Fg,
frob:()=>Lg,fromMat2d:()=>dg,fromMat4:()=>ig,fromQuat:()=>Eg,fromRotation:()=>Sg,fromScaling:()=>Mg,fromTranslation:()=>Cg,
fromValues:()=>cg,identity:()=>gg,invert:()=>lg,mul:()=>Vg,multiply:()=>ti,multiplyScalar:()=>_g,multiplyScalarAndAdd:()=>mg,
normalFromMat4:()=>Rg,projection:()=>wg,rotate:()=>yg,scale:()=>xg,set:()=>ug,str:()=>Og,sub:()=>Bg,subtract:()=>ri,translate:()=>Tg,
transpose:()=>hg});function jn(){var t=new J(9);return J!=Float32Array&&(t[1]=0,t[2]=0,t[3]=0,t[5]=0,t[6]=0,t[7]=0),t[0]=1,t[4]=1,t[8]=1,t}
function ig(t,e){return t[0]=e[0],t[1]=e[1],t[2]=e[2],t[3]=e[4],t[4]=e[5],t[5]=e[6],t[6]=e[8],t[7]=e[9],t[8]=e[10],t}function og(t){
var e=new J(9);return e[0]=t[0],e[1]=t[1],e[2]=t[2],e[3]=t[3],e[4]=t[4],e[5]=t[5],e[6]=t[6],e[7]=t[7],e[8]=t[8],e}function fg(t,e){
return t[0]=e[0],t[1]=e[1],t[2]=e[2],t[3]=e[3],t[4]=e[4],t[5]=e[5],t[6]=e[6],t[7]=e[7],t[8]=e[8],t}function cg(t,e,r,n,a,s,i,o,f){
var c=new J(9);return c[0]=t,c[1]=e,c[2]=r,c[3]=n,c[4]=a,c[5]=s,c[6]=i,c[7]=o,c[8]=f,c}function ug(t,e,r,n,a,s,i,o,f,c){
return t[0]=e,t[1]=r,t[2]=n,t[3]=a,t[4]=s,t[5]=i,t[6]=o,t[7]=f,t[8]=c,t}function gg(t){return t[0]=1,t[1]=0,t[2]=0,t[3]=
0,t[4]=1,t[5]=0,t[6]=0,t[7]=0,t[8]=1,t}function hg(t,e){if(t===e){var r=e[1],n=e[2],a=e[5];t[1]=e[3],t[2]=e[6],t[3]=r,t[5]=
e[7],t[6]=n,t[7]=a}else t[0]=e[0],t[1]=e[3],t[2]=e[6],t[3]=e[1],t[4]=e[4],t[5]=e[7],t[6]=e[2],t[7]=e[5],t[8]=e[8];return t}
function lg(t,e){var r=e[0],n=e[1],a=e[2],s=e[3],i=e[4],o=e[5],f=e[6],c=e[7],u=e[8],h=u*i-o*c,l=-u*s+o*f,p=c*s-i*f,x=r*h+
n*l+a*p;return x?(x=1/x,t[0]=h*x,t[1]=(-u*n+a*c)*x,t[2]=(o*n-a*i)*x,t[3]=l*x,t[4]=(u*r-a*f)*x,t[5]=(-o*r+a*s)*x,t[6]=p*x,
t[7]=(-c*r+n*f)*x,t[8]=(i*r-n*s)*x,t):null}function pg(t,e){var r=e[0],n=e[1],a=e[2],s=e[3],i=e[4],o=e[5],f=e[6],c=e[7],
u=e[8];return t[0]=i*u-o*c,t[1]=a*c-n*u,t[2]=n*o-a*i,t[3]=o*f-s*u,t[4]=r*u-a*f,t[5]=a*s-r*o,t[6]=s*c-i*f,t[7]=n*f-r*c,t[8]=
r*i-n*s,t}function vg(t){var e=t[0],r=t[1],n=t[2],a=t[3],s=t[4],i=t[5],o=t[6],f=t[7],c=t[8];return e*(c*s-i*f)+r*(-c*a+i*
o)+n*(f*a-s*o)}function ti(t,e,r){var n=e[0],a=e[1],s=e[2],i=e[3],o=e[4],f=e[5],c=e[6],u=e[7],h=e[8],l=r[0],p=r[1],x=r[2],
g=r[3],y=r[4],C=r[5],M=r[6],v=r[7],T=r[8];return t[0]=l*n+p*i+x*c,t[1]=l*a+p*o+x*u,t[2]=l*s+p*f+x*h,t[3]=g*n+y*i+C*c,t[4]=
g*a+y*o+C*u,t[5]=g*s+y*f+C*h,t[6]=M*n+v*i+T*c,t[7]=M*a+v*o+T*u,t[8]=M*s+v*f+T*h,t}function Tg(t,e,r){var n=e[0],a=e[1],s=e[2],
i=e[3],o=e[4],f=e[5],c=e[6],u=e[7],h=e[8],l=r[0],p=r[1];return t[0]=n,t[1]=a,t[2]=s,t[3]=i,t[4]=o,t[5]=f,t[6]=l*n+p*i+c,
t[7]=l*a+p*o+u,t[8]=l*s+p*f+h,t}function yg(t,e,r){var n=e[0],a=e[1],s=e[2],i=e[3],o=e[4],f=e[5],c=e[6],u=e[7],h=e[8],l=Math.
sin(r),p=Math.cos(r);return t[0]=p*n+l*i,t[1]=p*a+l*o,t[2]=p*s+l*f,t[3]=p*i-l*n,t[4]=p*o-l*a,t[5]=p*f-l*s,t[6]=c,t[7]=u,
t[8]=h,t}function xg(t,e,r){var n=r[0],a=r[1];return t[0]=n*e[0],t[1]=n*e[1],t[2]=n*e[2],t[3]=a*e[3],t[4]=a*e[4],t[5]=a*
e[5],t[6]=e[6],t[7]=e[7],t[8]=e[8],t}function Cg(t,e){return t[0]=1,t[1]=0,t[2]=0,t[3]=0,t[4]=1,t[5]=0,t[6]=e[0],t[7]=e[1],
t[8]=1,t}function Sg(t,e){var r=Math.sin(e),n=Math.cos(e);return t[0]=n,t[1]=r,t[2]=0,t[3]=-r,t[4]=n,t[5]=0,t[6]=0,t[7]=
0,t[8]=1,t}function Mg(t,e){return t[0]=e[0],t[1]=0,t[2]=0,t[3]=0,t[4]=e[1],t[5]=0,t[6]=0,t[7]=0,t[8]=1,t}function dg(t,e){
return t[0]=e[0],t[1]=e[1],t[2]=0,t[3]=e[2],t[4]=e[3],t[5]=0,t[6]=e[4],t[7]=e[5],t[8]=1,t}function Eg(t,e){var r=e[0],n=e[1],
a=e[2],s=e[3],i=r+r,o=n+n,f=a+a,c=r*i,u=n*i,h=n*o,l=a*i,p=a*o,x=a*f,g=s*i,y=s*o,C=s*f;return t[0]=1-h-x,t[3]=u-C,t[6]=l+
y,t[1]=u+C,t[4]=1-c-x,t[7]=p-g,t[2]=l-y,t[5]=p+g,t[8]=1-c-h,t}function Rg(t,e){var r=e[0],n=e[1],a=e[2],s=e[3],i=e[4],o=e[5],
f=e[6],c=e[7],u=e[8],h=e[9],l=e[10],p=e[11],x=e[12],g=e[13],y=e[14],C=e[15],M=r*o-n*i,v=r*f-a*i,T=r*c-s*i,S=n*f-a*o,d=n*
c-s*o,R=a*c-s*f,w=u*g-h*x,L=u*y-l*x,O=u*C-p*x,D=h*y-l*g,m=h*C-p*g,V=l*C-p*y,F=M*V-v*m+T*D+S*O-d*L+R*w;return F?(F=1/F,t[0]=
(o*V-f*m+c*D)*F,t[1]=(f*O-i*V-c*L)*F,t[2]=(i*m-o*O+c*w)*F,t[3]=(a*m-n*V-s*D)*F,t[4]=(r*V-a*O+s*L)*F,t[5]=(n*O-r*m-s*w)*F,
t[6]=(g*R-y*d+C*S)*F,t[7]=(y*T-x*R-C*v)*F,t[8]=(x*d-g*T+C*M)*F,t):null}function wg(t,e,r){return t[0]=2/e,t[1]=0,t[2]=0,
t[3]=0,t[4]=-2/r,t[5]=0,t[6]=-1,t[7]=1,t[8]=1,t}function Og(t){return"mat3("+t[0]+", "+t[1]+", "+t[2]+", "+t[3]+", "+t[4]+
", "+t[5]+", "+t[6]+", "+t[7]+", "+t[8]+")"}function Lg(t){return Math.hypot(t[0],t[1],t[2],t[3],t[4],t[5],t[6],t[7],t[8])}
function Dg(t,e,r){return t[0]=e[0]+r[0],t[1]=e[1]+r[1],t[2]=e[2]+r[2],t[3]=e[3]+r[3],t[4]=e[4]+r[4],t[5]=e[5]+r[5],t[6]=
e[6]+r[6],t[7]=e[7]+r[7],t[8]=e[8]+r[8],t}function ri(t,e,r){return t[0]=e[0]-r[0],t[1]=e[1]-r[1],t[2]=e[2]-r[2],t[3]=e[3]-
r[3],t[4]=e[4]-r[4],t[5]=e[5]-r[5],t[6]=e[6]-r[6],t[7]=e[7]-r[7],t[8]=e[8]-r[8],t}function _g(t,e,r){return t[0]=e[0]*r,
t[1]=e[1]*r,t[2]=e[2]*r,t[3]=e[3]*r,t[4]=e[4]*r,t[5]=e[5]*r,t[6]=e[6]*r,t[7]=e[7]*r,t[8]=e[8]*r,t}function mg(t,e,r,n){return t[0]=
e[0]+r[0]*n,t[1]=e[1]+r[1]*n,t[2]=e[2]+r[2]*n,t[3]=e[3]+r[3]*n,t[4]=e[4]+r[4]*n,t[5]=e[5]+r[5]*n,t[6]=e[6]+r[6]*n,t[7]=e[7]+
r[7]*n,t[8]=e[8]+r[8]*n,t}function Fg(t,e){return t[0]===e[0]&&t[1]===e[1]&&t[2]===e[2]&&t[3]===e[3]&&t[4]===e[4]&&t[5]===
e[5]&&t[6]===e[6]&&t[7]===e[7]&&t[8]===e[8]}function Ng(t,e){var r=t[0],n=t[1],a=t[2],s=t[3],i=t[4],o=t[5],f=t[6],c=t[7],
u=t[8],h=e[0],l=e[1],p=e[2],x=e[3],g=e[4],y=e[5],C=e[6],M=e[7],v=e[8];return Math.abs(r-h)<=W*Math.max(1,Math.abs(r),Math.
abs(h))&&Math.abs(n-l)<=W*Math.max(1,Math.abs(n),Math.abs(l))&&Math.abs(a-p)<=W*Math.max(1,Math.abs(a),Math.abs(p))&&Math.
abs(s-x)<=W*Math.max(1,Math.abs(s),Math.abs(x))&&Math.abs(i-g)<=W*Math.max(1,Math.abs(i),Math.abs(g))&&Math.abs(o-y)<=W*
Math.max(1,Math.abs(o),Math.abs(y))&&Math.abs(f-C)<=W*Math.max(1,Math.abs(f),Math.abs(C))&&Math.abs(c-M)<=W*Math.max(1,Math.
abs(c),Math.abs(M))&&Math.abs(u-v)<=W*Math.max(1,Math.abs(u),Math.abs(v))}var Vg=ti,Bg=ri;var _={};mt(_,{add:()=>xh,adjoint:()=>jg,clone:()=>Gg,copy:()=>kg,create:()=>Ug,determinant:()=>Kg,equals:()=>dh,exactEquals:()=>Mh,
frob:()=>yh,fromQuat:()=>oh,fromQuat2:()=>rh,fromRotation:()=>Pg,fromRotationTranslation:()=>si,fromRotationTranslationScale:()=>sh,
fromRotationTranslationScaleOrigin:()=>ih,fromScaling:()=>Ig,fromTranslation:()=>Jg,fromValues:()=>zg,fromXRotation:()=>bg,
fromYRotation:()=>eh,fromZRotation:()=>th,frustum:()=>fh,getRotation:()=>ah,getScaling:()=>ii,getTranslation:()=>nh,identity:()=>ni,
invert:()=>Ag,lookAt:()=>ph,mul:()=>Eh,multiply:()=>ai,multiplyScalar:()=>Ch,multiplyScalarAndAdd:()=>Sh,ortho:()=>hh,orthoNO:()=>fi,
orthoZO:()=>lh,perspective:()=>ch,perspectiveFromFieldOfView:()=>gh,perspectiveNO:()=>oi,perspectiveZO:()=>uh,rotate:()=>Yg,
rotateX:()=>qg,rotateY:()=>Zg,rotateZ:()=>Qg,scale:()=>Xg,set:()=>Hg,str:()=>Th,sub:()=>Rh,subtract:()=>ci,targetTo:()=>vh,
translate:()=>$g,transpose:()=>Wg});function Ug(){var t=new J(16);return J!=Float32Array&&(t[1]=0,t[2]=0,t[3]=0,t[4]=0,t[6]=0,t[7]=0,t[8]=0,t[9]=0,t[11]=0,t[12]=
0,t[13]=0,t[14]=0),t[0]=1,t[5]=1,t[10]=1,t[15]=1,t}function Gg(t){var e=new J(16);return e[0]=t[0],e[1]=t[1],e[2]=t[2],e[3]=
t[3],e[4]=t[4],e[5]=t[5],e[6]=t[6],e[7]=t[7],e[8]=t[8],e[9]=t[9],e[10]=t[10],e[11]=t[11],e[12]=t[12],e[13]=t[13],e[14]=t[14],
e[15]=t[15],e}function kg(t,e){return t[0]=e[0],t[1]=e[1],t[2]=e[2],t[3]=e[3],t[4]=e[4],t[5]=e[5],t[6]=e[6],t[7]=e[7],t[8]=
e[8],t[9]=e[9],t[10]=e[10],t[11]=e[11],t[12]=e[12],t[13]=e[13],t[14]=e[14],t[15]=e[15],t}function zg(t,e,r,n,a,s,i,o,f,c,u,h,l,p,x,g){
var y=new J(16);return y[0]=t,y[1]=e,y[2]=r,y[3]=n,y[4]=a,y[5]=s,y[6]=i,y[7]=o,y[8]=f,y[9]=c,y[10]=u,y[11]=h,y[12]=l,y[13]=
p,y[14]=x,y[15]=g,y}function Hg(t,e,r,n,a,s,i,o,f,c,u,h,l,p,x,g,y){return t[0]=e,t[1]=r,t[2]=n,t[3]=a,t[4]=s,t[5]=i,t[6]=
o,t[7]=f,t[8]=c,t[9]=u,t[10]=h,t[11]=l,t[12]=p,t[13]=x,t[14]=g,t[15]=y,t}function ni(t){return t[0]=1,t[1]=0,t[2]=0,t[3]=
0,t[4]=0,t[5]=1,t[6]=0,t[7]=0,t[8]=0,t[9]=0,t[10]=1,t[11]=0,t[12]=0,t[13]=0,t[14]=0,t[15]=1,t}function Wg(t,e){if(t===e){
var r=e[1],n=e[2],a=e[3],s=e[6],i=e[7],o=e[11];t[1]=e[4],t[2]=e[8],t[3]=e[12],t[4]=r,t[6]=e[9],t[7]=e[13],t[8]=n,t[9]=s,
t[11]=e[14],t[12]=a,t[13]=i,t[14]=o}else t[0]=e[0],t[1]=e[4],t[2]=e[8],t[3]=e[12],t[4]=e[1],t[5]=e[5],t[6]=e[9],t[7]=e[13],
t[8]=e[2],t[9]=e[6],t[10]=e[10],t[11]=e[14],t[12]=e[3],t[13]=e[7],t[14]=e[11],t[15]=e[15];return t}function Ag(t,e){var r=e[0],
n=e[1],a=e[2],s=e[3],i=e[4],o=e[5],f=e[6],c=e[7],u=e[8],h=e[9],l=e[10],p=e[11],x=e[12],g=e[13],y=e[14],C=e[15],M=r*o-n*i,
v=r*f-a*i,T=r*c-s*i,S=n*f-a*o,d=n*c-s*o,R=a*c-s*f,w=u*g-h*x,L=u*y-l*x,O=u*C-p*x,D=h*y-l*g,m=h*C-p*g,V=l*C-p*y,F=M*V-v*m+
T*D+S*O-d*L+R*w;return F?(F=1/F,t[0]=(o*V-f*m+c*D)*F,t[1]=(a*m-n*V-s*D)*F,t[2]=(g*R-y*d+C*S)*F,t[3]=(l*d-h*R-p*S)*F,t[4]=
(f*O-i*V-c*L)*F,t[5]=(r*V-a*O+s*L)*F,t[6]=(y*T-x*R-C*v)*F,t[7]=(u*R-l*T+p*v)*F,t[8]=(i*m-o*O+c*w)*F,t[9]=(n*O-r*m-s*w)*F,
t[10]=(x*d-g*T+C*M)*F,t[11]=(h*T-u*d-p*M)*F,t[12]=(o*L-i*D-f*w)*F,t[13]=(r*D-n*L+a*w)*F,t[14]=(g*v-x*S-y*M)*F,t[15]=(u*S-
h*v+l*M)*F,t):null}function jg(t,e){var r=e[0],n=e[1],a=e[2],s=e[3],i=e[4],o=e[5],f=e[6],c=e[7],u=e[8],h=e[9],l=e[10],p=e[11],
x=e[12],g=e[13],y=e[14],C=e[15];return t[0]=o*(l*C-p*y)-h*(f*C-c*y)+g*(f*p-c*l),t[1]=-(n*(l*C-p*y)-h*(a*C-s*y)+g*(a*p-s*
l)),t[2]=n*(f*C-c*y)-o*(a*C-s*y)+g*(a*c-s*f),t[3]=-(n*(f*p-c*l)-o*(a*p-s*l)+h*(a*c-s*f)),t[4]=-(i*(l*C-p*y)-u*(f*C-c*y)+
x*(f*p-c*l)),t[5]=r*(l*C-p*y)-u*(a*C-s*y)+x*(a*p-s*l),t[6]=-(r*(f*C-c*y)-i*(a*C-s*y)+x*(a*c-s*f)),t[7]=r*(f*p-c*l)-i*(a*
p-s*l)+u*(a*c-s*f),t[8]=i*(h*C-p*g)-u*(o*C-c*g)+x*(o*p-c*h),t[9]=-(r*(h*C-p*g)-u*(n*C-s*g)+x*(n*p-s*h)),t[10]=r*(o*C-c*g)-
i*(n*C-s*g)+x*(n*c-s*o),t[11]=-(r*(o*p-c*h)-i*(n*p-s*h)+u*(n*c-s*o)),t[12]=-(i*(h*y-l*g)-u*(o*y-f*g)+x*(o*l-f*h)),t[13]=
r*(h*y-l*g)-u*(n*y-a*g)+x*(n*l-a*h),t[14]=-(r*(o*y-f*g)-i*(n*y-a*g)+x*(n*f-a*o)),t[15]=r*(o*l-f*h)-i*(n*l-a*h)+u*(n*f-a*
o),t}function Kg(t){var e=t[0],r=t[1],n=t[2],a=t[3],s=t[4],i=t[5],o=t[6],f=t[7],c=t[8],u=t[9],h=t[10],l=t[11],p=t[12],x=t[13],
g=t[14],y=t[15],C=e*i-r*s,M=e*o-n*s,v=e*f-a*s,T=r*o-n*i,S=r*f-a*i,d=n*f-a*o,R=c*x-u*p,w=c*g-h*p,L=c*y-l*p,O=u*g-h*x,D=u*
y-l*x,m=h*y-l*g;return C*m-M*D+v*O+T*L-S*w+d*R}function ai(t,e,r){var n=e[0],a=e[1],s=e[2],i=e[3],o=e[4],f=e[5],c=e[6],u=e[7],
h=e[8],l=e[9],p=e[10],x=e[11],g=e[12],y=e[13],C=e[14],M=e[15],v=r[0],T=r[1],S=r[2],d=r[3];return t[0]=v*n+T*o+S*h+d*g,t[1]=
v*a+T*f+S*l+d*y,t[2]=v*s+T*c+S*p+d*C,t[3]=v*i+T*u+S*x+d*M,v=r[4],T=r[5],S=r[6],d=r[7],t[4]=v*n+T*o+S*h+d*g,t[5]=v*a+T*f+
S*l+d*y,t[6]=v*s+T*c+S*p+d*C,t[7]=v*i+T*u+S*x+d*M,v=r[8],T=r[9],S=r[10],d=r[11],t[8]=v*n+T*o+S*h+d*g,t[9]=v*a+T*f+S*l+d*
y,t[10]=v*s+T*c+S*p+d*C,t[11]=v*i+T*u+S*x+d*M,v=r[12],T=r[13],S=r[14],d=r[15],t[12]=v*n+T*o+S*h+d*g,t[13]=v*a+T*f+S*l+d*
y,t[14]=v*s+T*c+S*p+d*C,t[15]=v*i+T*u+S*x+d*M,t}function $g(t,e,r){var n=r[0],a=r[1],s=r[2],i,o,f,c,u,h,l,p,x,g,y,C;return e===
t?(t[12]=e[0]*n+e[4]*a+e[8]*s+e[12],t[13]=e[1]*n+e[5]*a+e[9]*s+e[13],t[14]=e[2]*n+e[6]*a+e[10]*s+e[14],t[15]=e[3]*n+e[7]*
a+e[11]*s+e[15]):(i=e[0],o=e[1],f=e[2],c=e[3],u=e[4],h=e[5],l=e[6],p=e[7],x=e[8],g=e[9],y=e[10],C=e[11],t[0]=i,t[1]=o,t[2]=
f,t[3]=c,t[4]=u,t[5]=h,t[6]=l,t[7]=p,t[8]=x,t[9]=g,t[10]=y,t[11]=C,t[12]=i*n+u*a+x*s+e[12],t[13]=o*n+h*a+g*s+e[13],t[14]=
f*n+l*a+y*s+e[14],t[15]=c*n+p*a+C*s+e[15]),t}function Xg(t,e,r){var n=r[0],a=r[1],s=r[2];return t[0]=e[0]*n,t[1]=e[1]*n,
t[2]=e[2]*n,t[3]=e[3]*n,t[4]=e[4]*a,t[5]=e[5]*a,t[6]=e[6]*a,t[7]=e[7]*a,t[8]=e[8]*s,t[9]=e[9]*s,t[10]=e[10]*s,t[11]=e[11]*
s,t[12]=e[12],t[13]=e[13],t[14]=e[14],t[15]=e[15],t}function Yg(t,e,r,n){var a=n[0],s=n[1],i=n[2],o=Math.hypot(a,s,i),f,
c,u,h,l,p,x,g,y,C,M,v,T,S,d,R,w,L,O,D,m,V,F,G;return o<W?null:(o=1/o,a*=o,s*=o,i*=o,f=Math.sin(r),c=Math.cos(r),u=1-c,h=
e[0],l=e[1],p=e[2],x=e[3],g=e[4],y=e[5],C=e[6],M=e[7],v=e[8],T=e[9],S=e[10],d=e[11],R=a*a*u+c,w=s*a*u+i*f,L=i*a*u-s*f,O=
a*s*u-i*f,D=s*s*u+c,m=i*s*u+a*f,V=a*i*u+s*f,F=s*i*u-a*f,G=i*i*u+c,t[0]=h*R+g*w+v*L,t[1]=l*R+y*w+T*L,t[2]=p*R+C*w+S*L,t[3]=
x*R+M*w+d*L,t[4]=h*O+g*D+v*m,t[5]=l*O+y*D+T*m,t[6]=p*O+C*D+S*m,t[7]=x*O+M*D+d*m,t[8]=h*V+g*F+v*G,t[9]=l*V+y*F+T*G,t[10]=
p*V+C*F+S*G,t[11]=x*V+M*F+d*G,e!==t&&(t[12]=e[12],t[13]=e[13],t[14]=e[14],t[15]=e[15]),t)}function qg(t,e,r){var n=Math.
sin(r),a=Math.cos(r),s=e[4],i=e[5],o=e[6],f=e[7],c=e[8],u=e[9],h=e[10],l=e[11];return e!==t&&(t[0]=e[0],t[1]=e[1],t[2]=e[2],
t[3]=e[3],t[12]=e[12],t[13]=e[13],t[14]=e[14],t[15]=e[15]),t[4]=s*a+c*n,t[5]=i*a+u*n,t[6]=o*a+h*n,t[7]=f*a+l*n,t[8]=c*a-
s*n,t[9]=u*a-i*n,t[10]=h*a-o*n,t[11]=l*a-f*n,t}function Zg(t,e,r){var n=Math.sin(r),a=Math.cos(r),s=e[0],i=e[1],o=e[2],f=e[3],
c=e[8],u=e[9],h=e[10],l=e[11];return e!==t&&(t[4]=e[4],t[5]=e[5],t[6]=e[6],t[7]=e[7],t[12]=e[12],t[13]=e[13],t[14]=e[14],
t[15]=e[15]),t[0]=s*a-c*n,t[1]=i*a-u*n,t[2]=o*a-h*n,t[3]=f*a-l*n,t[8]=s*n+c*a,t[9]=i*n+u*a,t[10]=o*n+h*a,t[11]=f*n+l*a,t}
function Qg(t,e,r){var n=Math.sin(r),a=Math.cos(r),s=e[0],i=e[1],o=e[2],f=e[3],c=e[4],u=e[5],h=e[6],l=e[7];return e!==t&&
(t[8]=e[8],t[9]=e[9],t[10]=e[10],t[11]=e[11],t[12]=e[12],t[13]=e[13],t[14]=e[14],t[15]=e[15]),t[0]=s*a+c*n,t[1]=i*a+u*n,
t[2]=o*a+h*n,t[3]=f*a+l*n,t[4]=c*a-s*n,t[5]=u*a-i*n,t[6]=h*a-o*n,t[7]=l*a-f*n,t}function Jg(t,e){return t[0]=1,t[1]=0,t[2]=
0,t[3]=0,t[4]=0,t[5]=1,t[6]=0,t[7]=0,t[8]=0,t[9]=0,t[10]=1,t[11]=0,t[12]=e[0],t[13]=e[1],t[14]=e[2],t[15]=1,t}function Ig(t,e){
return t[0]=e[0],t[1]=0,t[2]=0,t[3]=0,t[4]=0,t[5]=e[1],t[6]=0,t[7]=0,t[8]=0,t[9]=0,t[10]=e[2],t[11]=0,t[12]=0,t[13]=0,t[14]=
0,t[15]=1,t}function Pg(t,e,r){var n=r[0],a=r[1],s=r[2],i=Math.hypot(n,a,s),o,f,c;return i<W?null:(i=1/i,n*=i,a*=i,s*=i,
o=Math.sin(e),f=Math.cos(e),c=1-f,t[0]=n*n*c+f,t[1]=a*n*c+s*o,t[2]=s*n*c-a*o,t[3]=0,t[4]=n*a*c-s*o,t[5]=a*a*c+f,t[6]=s*a*
c+n*o,t[7]=0,t[8]=n*s*c+a*o,t[9]=a*s*c-n*o,t[10]=s*s*c+f,t[11]=0,t[12]=0,t[13]=0,t[14]=0,t[15]=1,t)}function bg(t,e){var r=Math.
sin(e),n=Math.cos(e);return t[0]=1,t[1]=0,t[2]=0,t[3]=0,t[4]=0,t[5]=n,t[6]=r,t[7]=0,t[8]=0,t[9]=-r,t[10]=n,t[11]=0,t[12]=
0,t[13]=0,t[14]=0,t[15]=1,t}function eh(t,e){var r=Math.sin(e),n=Math.cos(e);return t[0]=n,t[1]=0,t[2]=-r,t[3]=0,t[4]=0,
t[5]=1,t[6]=0,t[7]=0,t[8]=r,t[9]=0,t[10]=n,t[11]=0,t[12]=0,t[13]=0,t[14]=0,t[15]=1,t}function th(t,e){var r=Math.sin(e),
n=Math.cos(e);return t[0]=n,t[1]=r,t[2]=0,t[3]=0,t[4]=-r,t[5]=n,t[6]=0,t[7]=0,t[8]=0,t[9]=0,t[10]=1,t[11]=0,t[12]=0,t[13]=
0,t[14]=0,t[15]=1,t}function si(t,e,r){var n=e[0],a=e[1],s=e[2],i=e[3],o=n+n,f=a+a,c=s+s,u=n*o,h=n*f,l=n*c,p=a*f,x=a*c,g=s*
c,y=i*o,C=i*f,M=i*c;return t[0]=1-(p+g),t[1]=h+M,t[2]=l-C,t[3]=0,t[4]=h-M,t[5]=1-(u+g),t[6]=x+y,t[7]=0,t[8]=l+C,t[9]=x-y,
t[10]=1-(u+p),t[11]=0,t[12]=r[0],t[13]=r[1],t[14]=r[2],t[15]=1,t}function rh(t,e){var r=new J(3),n=-e[0],a=-e[1],s=-e[2],
i=e[3],o=e[4],f=e[5],c=e[6],u=e[7],h=n*n+a*a+s*s+i*i;return h>0?(r[0]=(o*i+u*n+f*s-c*a)*2/h,r[1]=(f*i+u*a+c*n-o*s)*2/h,r[2]=
(c*i+u*s+o*a-f*n)*2/h):(r[0]=(o*i+u*n+f*s-c*a)*2,r[1]=(f*i+u*a+c*n-o*s)*2,r[2]=(c*i+u*s+o*a-f*n)*2),si(t,e,r),t}function nh(t,e){
return t[0]=e[12],t[1]=e[13],t[2]=e[14],t}function ii(t,e){var r=e[0],n=e[1],a=e[2],s=e[4],i=e[5],o=e[6],f=e[8],c=e[9],u=e[10];
return t[0]=Math.hypot(r,n,a),t[1]=Math.hypot(s,i,o),t[2]=Math.hypot(f,c,u),t}function ah(t,e){var r=new J(3);ii(r,e);var n=1/
r[0],a=1/r[1],s=1/r[2],i=e[0]*n,o=e[1]*a,f=e[2]*s,c=e[4]*n,u=e[5]*a,h=e[6]*s,l=e[8]*n,p=e[9]*a,x=e[10]*s,g=i+u+x,y=0;return g>
0?(y=Math.sqrt(g+1)*2,t[3]=.25*y,t[0]=(h-p)/y,t[1]=(l-f)/y,t[2]=(o-c)/y):i>u&&i>x?(y=Math.sqrt(1+i-u-x)*2,t[3]=(h-p)/y,t[0]=
.25*y,t[1]=(o+c)/y,t[2]=(l+f)/y):u>x?(y=Math.sqrt(1+u-i-x)*2,t[3]=(l-f)/y,t[0]=(o+c)/y,t[1]=.25*y,t[2]=(h+p)/y):(y=Math.
sqrt(1+x-i-u)*2,t[3]=(o-c)/y,t[0]=(l+f)/y,t[1]=(h+p)/y,t[2]=.25*y),t}function sh(t,e,r,n){var a=e[0],s=e[1],i=e[2],o=e[3],
f=a+a,c=s+s,u=i+i,h=a*f,l=a*c,p=a*u,x=s*c,g=s*u,y=i*u,C=o*f,M=o*c,v=o*u,T=n[0],S=n[1],d=n[2];return t[0]=(1-(x+y))*T,t[1]=
(l+v)*T,t[2]=(p-M)*T,t[3]=0,t[4]=(l-v)*S,t[5]=(1-(h+y))*S,t[6]=(g+C)*S,t[7]=0,t[8]=(p+M)*d,t[9]=(g-C)*d,t[10]=(1-(h+x))*
d,t[11]=0,t[12]=r[0],t[13]=r[1],t[14]=r[2],t[15]=1,t}function ih(t,e,r,n,a){var s=e[0],i=e[1],o=e[2],f=e[3],c=s+s,u=i+i,
h=o+o,l=s*c,p=s*u,x=s*h,g=i*u,y=i*h,C=o*h,M=f*c,v=f*u,T=f*h,S=n[0],d=n[1],R=n[2],w=a[0],L=a[1],O=a[2],D=(1-(g+C))*S,m=(p+
T)*S,V=(x-v)*S,F=(p-T)*d,G=(1-(l+C))*d,B=(y+M)*d,A=(x+v)*R,q=(y-M)*R,ie=(1-(l+g))*R;return t[0]=D,t[1]=m,t[2]=V,t[3]=0,t[4]=
F,t[5]=G,t[6]=B,t[7]=0,t[8]=A,t[9]=q,t[10]=ie,t[11]=0,t[12]=r[0]+w-(D*w+F*L+A*O),t[13]=r[1]+L-(m*w+G*L+q*O),t[14]=r[2]+O-
(V*w+B*L+ie*O),t[15]=1,t}function oh(t,e){var r=e[0],n=e[1],a=e[2],s=e[3],i=r+r,o=n+n,f=a+a,c=r*i,u=n*i,h=n*o,l=a*i,p=a*
o,x=a*f,g=s*i,y=s*o,C=s*f;return t[0]=1-h-x,t[1]=u+C,t[2]=l-y,t[3]=0,t[4]=u-C,t[5]=1-c-x,t[6]=p+g,t[7]=0,t[8]=l+y,t[9]=p-
g,t[10]=1-c-h,t[11]=0,t[12]=0,t[13]=0,t[14]=0,t[15]=1,t}function fh(t,e,r,n,a,s,i){var o=1/(r-e),f=1/(a-n),c=1/(s-i);return t[0]=
s*2*o,t[1]=0,t[2]=0,t[3]=0,t[4]=0,t[5]=s*2*f,t[6]=0,t[7]=0,t[8]=(r+e)*o,t[9]=(a+n)*f,t[10]=(i+s)*c,t[11]=-1,t[12]=0,t[13]=
0,t[14]=i*s*2*c,t[15]=0,t}function oi(t,e,r,n,a){var s=1/Math.tan(e/2),i;return t[0]=s/r,t[1]=0,t[2]=0,t[3]=0,t[4]=0,t[5]=
s,t[6]=0,t[7]=0,t[8]=0,t[9]=0,t[11]=-1,t[12]=0,t[13]=0,t[15]=0,a!=null&&a!==1/0?(i=1/(n-a),t[10]=(a+n)*i,t[14]=2*a*n*i):
(t[10]=-1,t[14]=-2*n),t}var ch=oi;function uh(t,e,r,n,a){var s=1/Math.tan(e/2),i;return t[0]=s/r,t[1]=0,t[2]=0,t[3]=0,t[4]=
0,t[5]=s,t[6]=0,t[7]=0,t[8]=0,t[9]=0,t[11]=-1,t[12]=0,t[13]=0,t[15]=0,a!=null&&a!==1/0?(i=1/(n-a),t[10]=a*i,t[14]=a*n*i):
(t[10]=-1,t[14]=-n),t}function gh(t,e,r,n){var a=Math.tan(e.upDegrees*Math.PI/180),s=Math.tan(e.downDegrees*Math.PI/180),
i=Math.tan(e.leftDegrees*Math.PI/180),o=Math.tan(e.rightDegrees*Math.PI/180),f=2/(i+o),c=2/(a+s);return t[0]=f,t[1]=0,t[2]=
0,t[3]=0,t[4]=0,t[5]=c,t[6]=0,t[7]=0,t[8]=-((i-o)*f*.5),t[9]=(a-s)*c*.5,t[10]=n/(r-n),t[11]=-1,t[12]=0,t[13]=0,t[14]=n*r/
(r-n),t[15]=0,t}function fi(t,e,r,n,a,s,i){var o=1/(e-r),f=1/(n-a),c=1/(s-i);return t[0]=-2*o,t[1]=0,t[2]=0,t[3]=0,t[4]=
0,t[5]=-2*f,t[6]=0,t[7]=0,t[8]=0,t[9]=0,t[10]=2*c,t[11]=0,t[12]=(e+r)*o,t[13]=(a+n)*f,t[14]=(i+s)*c,t[15]=1,t}var hh=fi;
function lh(t,e,r,n,a,s,i){var o=1/(e-r),f=1/(n-a),c=1/(s-i);return t[0]=-2*o,t[1]=0,t[2]=0,t[3]=0,t[4]=0,t[5]=-2*f,t[6]=
0,t[7]=0,t[8]=0,t[9]=0,t[10]=c,t[11]=0,t[12]=(e+r)*o,t[13]=(a+n)*f,t[14]=s*c,t[15]=1,t}function ph(t,e,r,n){var a,s,i,o,
f,c,u,h,l,p,x=e[0],g=e[1],y=e[2],C=n[0],M=n[1],v=n[2],T=r[0],S=r[1],d=r[2];return Math.abs(x-T)<W&&Math.abs(g-S)<W&&Math.
abs(y-d)<W?ni(t):(u=x-T,h=g-S,l=y-d,p=1/Math.hypot(u,h,l),u*=p,h*=p,l*=p,a=M*l-v*h,s=v*u-C*l,i=C*h-M*u,p=Math.hypot(a,s,
i),p?(p=1/p,a*=p,s*=p,i*=p):(a=0,s=0,i=0),o=h*i-l*s,f=l*a-u*i,c=u*s-h*a,p=Math.hypot(o,f,c),p?(p=1/p,o*=p,f*=p,c*=p):(o=
0,f=0,c=0),t[0]=a,t[1]=o,t[2]=u,t[3]=0,t[4]=s,t[5]=f,t[6]=h,t[7]=0,t[8]=i,t[9]=c,t[10]=l,t[11]=0,t[12]=-(a*x+s*g+i*y),t[13]=
-(o*x+f*g+c*y),t[14]=-(u*x+h*g+l*y),t[15]=1,t)}function vh(t,e,r,n){var a=e[0],s=e[1],i=e[2],o=n[0],f=n[1],c=n[2],u=a-r[0],
h=s-r[1],l=i-r[2],p=u*u+h*h+l*l;p>0&&(p=1/Math.sqrt(p),u*=p,h*=p,l*=p);var x=f*l-c*h,g=c*u-o*l,y=o*h-f*u;return p=x*x+g*
g+y*y,p>0&&(p=1/Math.sqrt(p),x*=p,g*=p,y*=p),t[0]=x,t[1]=g,t[2]=y,t[3]=0,t[4]=h*y-l*g,t[5]=l*x-u*y,t[6]=u*g-h*x,t[7]=0,t[8]=
u,t[9]=h,t[10]=l,t[11]=0,t[12]=a,t[13]=s,t[14]=i,t[15]=1,t}function Th(t){return"mat4("+t[0]+", "+t[1]+", "+t[2]+", "+t[3]+
", "+t[4]+", "+t[5]+", "+t[6]+", "+t[7]+", "+t[8]+", "+t[9]+", "+t[10]+", "+t[11]+", "+t[12]+", "+t[13]+", "+t[14]+", "+
t[15]+")"}function yh(t){return Math.hypot(t[0],t[1],t[2],t[3],t[4],t[5],t[6],t[7],t[8],t[9],t[10],t[11],t[12],t[13],t[14],
t[15])}function xh(t,e,r){return t[0]=e[0]+r[0],t[1]=e[1]+r[1],t[2]=e[2]+r[2],t[3]=e[3]+r[3],t[4]=e[4]+r[4],t[5]=e[5]+r[5],
t[6]=e[6]+r[6],t[7]=e[7]+r[7],t[8]=e[8]+r[8],t[9]=e[9]+r[9],t[10]=e[10]+r[10],t[11]=e[11]+r[11],t[12]=e[12]+r[12],t[13]=
e[13]+r[13],t[14]=e[14]+r[14],t[15]=e[15]+r[15],t}function ci(t,e,r){return t[0]=e[0]-r[0],t[1]=e[1]-r[1],t[2]=e[2]-r[2],
t[3]=e[3]-r[3],t[4]=e[4]-r[4],t[5]=e[5]-r[5],t[6]=e[6]-r[6],t[7]=e[7]-r[7],t[8]=e[8]-r[8],t[9]=e[9]-r[9],t[10]=e[10]-r[10],
t[11]=e[11]-r[11],t[12]=e[12]-r[12],t[13]=e[13]-r[13],t[14]=e[14]-r[14],t[15]=e[15]-r[15],t}function Ch(t,e,r){return t[0]=
e[0]*r,t[1]=e[1]*r,t[2]=e[2]*r,t[3]=e[3]*r,t[4]=e[4]*r,t[5]=e[5]*r,t[6]=e[6]*r,t[7]=e[7]*r,t[8]=e[8]*r,t[9]=e[9]*r,t[10]=
e[10]*r,t[11]=e[11]*r,t[12]=e[12]*r,t[13]=e[13]*r,t[14]=e[14]*r,t[15]=e[15]*r,t}function Sh(t,e,r,n){return t[0]=e[0]+r[0]*
n,t[1]=e[1]+r[1]*n,t[2]=e[2]+r[2]*n,t[3]=e[3]+r[3]*n,t[4]=e[4]+r[4]*n,t[5]=e[5]+r[5]*n,t[6]=e[6]+r[6]*n,t[7]=e[7]+r[7]*n,
t[8]=e[8]+r[8]*n,t[9]=e[9]+r[9]*n,t[10]=e[10]+r[10]*n,t[11]=e[11]+r[11]*n,t[12]=e[12]+r[12]*n,t[13]=e[13]+r[13]*n,t[14]=
e[14]+r[14]*n,t[15]=e[15]+r[15]*n,t}function Mh(t,e){return t[0]===e[0]&&t[1]===e[1]&&t[2]===e[2]&&t[3]===e[3]&&t[4]===e[4]&&
t[5]===e[5]&&t[6]===e[6]&&t[7]===e[7]&&t[8]===e[8]&&t[9]===e[9]&&t[10]===e[10]&&t[11]===e[11]&&t[12]===e[12]&&t[13]===e[13]&&
t[14]===e[14]&&t[15]===e[15]}function dh(t,e){var r=t[0],n=t[1],a=t[2],s=t[3],i=t[4],o=t[5],f=t[6],c=t[7],u=t[8],h=t[9],
l=t[10],p=t[11],x=t[12],g=t[13],y=t[14],C=t[15],M=e[0],v=e[1],T=e[2],S=e[3],d=e[4],R=e[5],w=e[6],L=e[7],O=e[8],D=e[9],m=e[10],
V=e[11],F=e[12],G=e[13],B=e[14],A=e[15];return Math.abs(r-M)<=W*Math.max(1,Math.abs(r),Math.abs(M))&&Math.abs(n-v)<=W*Math.
max(1,Math.abs(n),Math.abs(v))&&Math.abs(a-T)<=W*Math.max(1,Math.abs(a),Math.abs(T))&&Math.abs(s-S)<=W*Math.max(1,Math.abs(
s),Math.abs(S))&&Math.abs(i-d)<=W*Math.max(1,Math.abs(i),Math.abs(d))&&Math.abs(o-R)<=W*Math.max(1,Math.abs(o),Math.abs(
R))&&Math.abs(f-w)<=W*Math.max(1,Math.abs(f),Math.abs(w))&&Math.abs(c-L)<=W*Math.max(1,Math.abs(c),Math.abs(L))&&Math.abs(
u-O)<=W*Math.max(1,Math.abs(u),Math.abs(O))&&Math.abs(h-D)<=W*Math.max(1,Math.abs(h),Math.abs(D))&&Math.abs(l-m)<=W*Math.
max(1,Math.abs(l),Math.abs(m))&&Math.abs(p-V)<=W*Math.max(1,Math.abs(p),Math.abs(V))&&Math.abs(x-F)<=W*Math.max(1,Math.abs(
x),Math.abs(F))&&Math.abs(g-G)<=W*Math.max(1,Math.abs(g),Math.abs(G))&&Math.abs(y-B)<=W*Math.max(1,Math.abs(y),Math.abs(
B))&&Math.abs(C-A)<=W*Math.max(1,Math.abs(C),Math.abs(A))}var Eh=ai,Rh=ci;var ae={};mt(ae,{add:()=>Xl,calculateW:()=>Bl,clone:()=>Al,conjugate:()=>zl,copy:()=>Kl,create:()=>ra,dot:()=>_i,equals:()=>Il,
exactEquals:()=>Jl,exp:()=>wi,fromEuler:()=>Hl,fromMat3:()=>Li,fromValues:()=>jl,getAngle:()=>ml,getAxisAngle:()=>_l,identity:()=>Dl,
invert:()=>kl,len:()=>Zl,length:()=>mi,lerp:()=>ql,ln:()=>Oi,mul:()=>Yl,multiply:()=>Ri,normalize:()=>na,pow:()=>Ul,random:()=>Gl,
rotateX:()=>Fl,rotateY:()=>Nl,rotateZ:()=>Vl,rotationTo:()=>Pl,scale:()=>Di,set:()=>$l,setAxes:()=>e1,setAxisAngle:()=>Ei,
slerp:()=>wr,sqlerp:()=>bl,sqrLen:()=>Ql,squaredLength:()=>Fi,str:()=>Wl});var k={};mt(k,{add:()=>Dh,angle:()=>Zh,bezier:()=>Wh,ceil:()=>_h,clone:()=>wh,copy:()=>Oh,create:()=>Sr,cross:()=>Vt,dist:()=>rl,
distance:()=>pi,div:()=>tl,divide:()=>li,dot:()=>dr,equals:()=>Ph,exactEquals:()=>Ih,floor:()=>mh,forEach:()=>sl,fromValues:()=>Mr,
hermite:()=>Hh,inverse:()=>kh,len:()=>$n,length:()=>ui,lerp:()=>zh,max:()=>Nh,min:()=>Fh,mul:()=>el,multiply:()=>hi,negate:()=>Gh,
normalize:()=>Kn,random:()=>Ah,rotateX:()=>Xh,rotateY:()=>Yh,rotateZ:()=>qh,round:()=>Vh,scale:()=>Bh,scaleAndAdd:()=>Uh,
set:()=>Lh,sqrDist:()=>nl,sqrLen:()=>al,squaredDistance:()=>vi,squaredLength:()=>Ti,str:()=>Jh,sub:()=>bh,subtract:()=>gi,
transformMat3:()=>Kh,transformMat4:()=>jh,transformQuat:()=>$h,zero:()=>Qh});function Sr(){var t=new J(3);return J!=Float32Array&&(t[0]=0,t[1]=0,t[2]=0),t}function wh(t){var e=new J(3);return e[0]=
t[0],e[1]=t[1],e[2]=t[2],e}function ui(t){var e=t[0],r=t[1],n=t[2];return Math.hypot(e,r,n)}function Mr(t,e,r){var n=new J(
3);return n[0]=t,n[1]=e,n[2]=r,n}function Oh(t,e){return t[0]=e[0],t[1]=e[1],t[2]=e[2],t}function Lh(t,e,r,n){return t[0]=
e,t[1]=r,t[2]=n,t}function Dh(t,e,r){return t[0]=e[0]+r[0],t[1]=e[1]+r[1],t[2]=e[2]+r[2],t}function gi(t,e,r){return t[0]=
e[0]-r[0],t[1]=e[1]-r[1],t[2]=e[2]-r[2],t}function hi(t,e,r){return t[0]=e[0]*r[0],t[1]=e[1]*r[1],t[2]=e[2]*r[2],t}function li(t,e,r){
return t[0]=e[0]/r[0],t[1]=e[1]/r[1],t[2]=e[2]/r[2],t}function _h(t,e){return t[0]=Math.ceil(e[0]),t[1]=Math.ceil(e[1]),
t[2]=Math.ceil(e[2]),t}function mh(t,e){return t[0]=Math.floor(e[0]),t[1]=Math.floor(e[1]),t[2]=Math.floor(e[2]),t}function Fh(t,e,r){
return t[0]=Math.min(e[0],r[0]),t[1]=Math.min(e[1],r[1]),t[2]=Math.min(e[2],r[2]),t}function Nh(t,e,r){return t[0]=Math.
max(e[0],r[0]),t[1]=Math.max(e[1],r[1]),t[2]=Math.max(e[2],r[2]),t}function Vh(t,e){return t[0]=Math.round(e[0]),t[1]=Math.
round(e[1]),t[2]=Math.round(e[2]),t}function Bh(t,e,r){return t[0]=e[0]*r,t[1]=e[1]*r,t[2]=e[2]*r,t}function Uh(t,e,r,n){
return t[0]=e[0]+r[0]*n,t[1]=e[1]+r[1]*n,t[2]=e[2]+r[2]*n,t}function pi(t,e){var r=e[0]-t[0],n=e[1]-t[1],a=e[2]-t[2];return Math.
hypot(r,n,a)}function vi(t,e){var r=e[0]-t[0],n=e[1]-t[1],a=e[2]-t[2];return r*r+n*n+a*a}function Ti(t){var e=t[0],r=t[1],
n=t[2];return e*e+r*r+n*n}function Gh(t,e){return t[0]=-e[0],t[1]=-e[1],t[2]=-e[2],t}function kh(t,e){return t[0]=1/e[0],
t[1]=1/e[1],t[2]=1/e[2],t}function Kn(t,e){var r=e[0],n=e[1],a=e[2],s=r*r+n*n+a*a;return s>0&&(s=1/Math.sqrt(s)),t[0]=e[0]*
s,t[1]=e[1]*s,t[2]=e[2]*s,t}function dr(t,e){return t[0]*e[0]+t[1]*e[1]+t[2]*e[2]}function Vt(t,e,r){var n=e[0],a=e[1],s=e[2],
i=r[0],o=r[1],f=r[2];return t[0]=a*f-s*o,t[1]=s*i-n*f,t[2]=n*o-a*i,t}function zh(t,e,r,n){var a=e[0],s=e[1],i=e[2];return t[0]=
a+n*(r[0]-a),t[1]=s+n*(r[1]-s),t[2]=i+n*(r[2]-i),t}function Hh(t,e,r,n,a,s){var i=s*s,o=i*(2*s-3)+1,f=i*(s-2)+s,c=i*(s-1),
u=i*(3-2*s);return t[0]=e[0]*o+r[0]*f+n[0]*c+a[0]*u,t[1]=e[1]*o+r[1]*f+n[1]*c+a[1]*u,t[2]=e[2]*o+r[2]*f+n[2]*c+a[2]*u,t}
function Wh(t,e,r,n,a,s){var i=1-s,o=i*i,f=s*s,c=o*i,u=3*s*o,h=3*f*i,l=f*s;return t[0]=e[0]*c+r[0]*u+n[0]*h+a[0]*l,t[1]=
e[1]*c+r[1]*u+n[1]*h+a[1]*l,t[2]=e[2]*c+r[2]*u+n[2]*h+a[2]*l,t}function Ah(t,e){e=e||1;var r=Le()*2*Math.PI,n=Le()*2-1,a=Math.
sqrt(1-n*n)*e;return t[0]=Math.cos(r)*a,t[1]=Math.sin(r)*a,t[2]=n*e,t}function jh(t,e,r){var n=e[0],a=e[1],s=e[2],i=r[3]*
n+r[7]*a+r[11]*s+r[15];return i=i||1,t[0]=(r[0]*n+r[4]*a+r[8]*s+r[12])/i,t[1]=(r[1]*n+r[5]*a+r[9]*s+r[13])/i,t[2]=(r[2]*
n+r[6]*a+r[10]*s+r[14])/i,t}function Kh(t,e,r){var n=e[0],a=e[1],s=e[2];return t[0]=n*r[0]+a*r[3]+s*r[6],t[1]=n*r[1]+a*r[4]+
s*r[7],t[2]=n*r[2]+a*r[5]+s*r[8],t}function $h(t,e,r){var n=r[0],a=r[1],s=r[2],i=r[3],o=e[0],f=e[1],c=e[2],u=a*c-s*f,h=s*
o-n*c,l=n*f-a*o,p=a*l-s*h,x=s*u-n*l,g=n*h-a*u,y=i*2;return u*=y,h*=y,l*=y,p*=2,x*=2,g*=2,t[0]=o+u+p,t[1]=f+h+x,t[2]=c+l+
g,t}function Xh(t,e,r,n){var a=[],s=[];return a[0]=e[0]-r[0],a[1]=e[1]-r[1],a[2]=e[2]-r[2],s[0]=a[0],s[1]=a[1]*Math.cos(
n)-a[2]*Math.sin(n),s[2]=a[1]*Math.sin(n)+a[2]*Math.cos(n),t[0]=s[0]+r[0],t[1]=s[1]+r[1],t[2]=s[2]+r[2],t}function Yh(t,e,r,n){
var a=[],s=[];return a[0]=e[0]-r[0],a[1]=e[1]-r[1],a[2]=e[2]-r[2],s[0]=a[2]*Math.sin(n)+a[0]*Math.cos(n),s[1]=a[1],s[2]=
a[2]*Math.cos(n)-a[0]*Math.sin(n),t[0]=s[0]+r[0],t[1]=s[1]+r[1],t[2]=s[2]+r[2],t}function qh(t,e,r,n){var a=[],s=[];return a[0]=
e[0]-r[0],a[1]=e[1]-r[1],a[2]=e[2]-r[2],s[0]=a[0]*Math.cos(n)-a[1]*Math.sin(n),s[1]=a[0]*Math.sin(n)+a[1]*Math.cos(n),s[2]=
a[2],t[0]=s[0]+r[0],t[1]=s[1]+r[1],t[2]=s[2]+r[2],t}function Zh(t,e){var r=t[0],n=t[1],a=t[2],s=e[0],i=e[1],o=e[2],f=Math.
sqrt(r*r+n*n+a*a),c=Math.sqrt(s*s+i*i+o*o),u=f*c,h=u&&dr(t,e)/u;return Math.acos(Math.min(Math.max(h,-1),1))}function Qh(t){
return t[0]=0,t[1]=0,t[2]=0,t}function Jh(t){return"vec3("+t[0]+", "+t[1]+", "+t[2]+")"}function Ih(t,e){return t[0]===e[0]&&
t[1]===e[1]&&t[2]===e[2]}function Ph(t,e){var r=t[0],n=t[1],a=t[2],s=e[0],i=e[1],o=e[2];return Math.abs(r-s)<=W*Math.max(
1,Math.abs(r),Math.abs(s))&&Math.abs(n-i)<=W*Math.max(1,Math.abs(n),Math.abs(i))&&Math.abs(a-o)<=W*Math.max(1,Math.abs(a),
Math.abs(o))}var bh=gi,el=hi,tl=li,rl=pi,nl=vi,$n=ui,al=Ti,sl=(function(){var t=Sr();return function(e,r,n,a,s,i){var o,
f;for(r||(r=3),n||(n=0),a?f=Math.min(a*r+n,e.length):f=e.length,o=n;o<f;o+=r)t[0]=e[o],t[1]=e[o+1],t[2]=e[o+2],s(t,t,i),
e[o]=t[0],e[o+1]=t[1],e[o+2]=t[2];return e}})();var De={};mt(De,{add:()=>Qn,ceil:()=>il,clone:()=>Xn,copy:()=>qn,create:()=>yi,cross:()=>pl,dist:()=>El,distance:()=>Mi,
div:()=>dl,divide:()=>Si,dot:()=>Pn,equals:()=>ta,exactEquals:()=>ea,floor:()=>ol,forEach:()=>Ll,fromValues:()=>Yn,inverse:()=>ll,
len:()=>wl,length:()=>Er,lerp:()=>bn,max:()=>cl,min:()=>fl,mul:()=>Ml,multiply:()=>Ci,negate:()=>hl,normalize:()=>In,random:()=>vl,
round:()=>ul,scale:()=>Jn,scaleAndAdd:()=>gl,set:()=>Zn,sqrDist:()=>Rl,sqrLen:()=>Ol,squaredDistance:()=>di,squaredLength:()=>Rr,
str:()=>Cl,sub:()=>Sl,subtract:()=>xi,transformMat4:()=>Tl,transformQuat:()=>yl,zero:()=>xl});function yi(){var t=new J(4);return J!=Float32Array&&(t[0]=0,t[1]=0,t[2]=0,t[3]=0),t}function Xn(t){var e=new J(4);return e[0]=
t[0],e[1]=t[1],e[2]=t[2],e[3]=t[3],e}function Yn(t,e,r,n){var a=new J(4);return a[0]=t,a[1]=e,a[2]=r,a[3]=n,a}function qn(t,e){
return t[0]=e[0],t[1]=e[1],t[2]=e[2],t[3]=e[3],t}function Zn(t,e,r,n,a){return t[0]=e,t[1]=r,t[2]=n,t[3]=a,t}function Qn(t,e,r){
return t[0]=e[0]+r[0],t[1]=e[1]+r[1],t[2]=e[2]+r[2],t[3]=e[3]+r[3],t}function xi(t,e,r){return t[0]=e[0]-r[0],t[1]=e[1]-
r[1],t[2]=e[2]-r[2],t[3]=e[3]-r[3],t}function Ci(t,e,r){return t[0]=e[0]*r[0],t[1]=e[1]*r[1],t[2]=e[2]*r[2],t[3]=e[3]*r[3],
t}function Si(t,e,r){return t[0]=e[0]/r[0],t[1]=e[1]/r[1],t[2]=e[2]/r[2],t[3]=e[3]/r[3],t}function il(t,e){return t[0]=Math.
ceil(e[0]),t[1]=Math.ceil(e[1]),t[2]=Math.ceil(e[2]),t[3]=Math.ceil(e[3]),t}function ol(t,e){return t[0]=Math.floor(e[0]),
t[1]=Math.floor(e[1]),t[2]=Math.floor(e[2]),t[3]=Math.floor(e[3]),t}function fl(t,e,r){return t[0]=Math.min(e[0],r[0]),t[1]=
Math.min(e[1],r[1]),t[2]=Math.min(e[2],r[2]),t[3]=Math.min(e[3],r[3]),t}function cl(t,e,r){return t[0]=Math.max(e[0],r[0]),
t[1]=Math.max(e[1],r[1]),t[2]=Math.max(e[2],r[2]),t[3]=Math.max(e[3],r[3]),t}function ul(t,e){return t[0]=Math.round(e[0]),
t[1]=Math.round(e[1]),t[2]=Math.round(e[2]),t[3]=Math.round(e[3]),t}function Jn(t,e,r){return t[0]=e[0]*r,t[1]=e[1]*r,t[2]=
e[2]*r,t[3]=e[3]*r,t}function gl(t,e,r,n){return t[0]=e[0]+r[0]*n,t[1]=e[1]+r[1]*n,t[2]=e[2]+r[2]*n,t[3]=e[3]+r[3]*n,t}function Mi(t,e){
var r=e[0]-t[0],n=e[1]-t[1],a=e[2]-t[2],s=e[3]-t[3];return Math.hypot(r,n,a,s)}function di(t,e){var r=e[0]-t[0],n=e[1]-t[1],
a=e[2]-t[2],s=e[3]-t[3];return r*r+n*n+a*a+s*s}function Er(t){var e=t[0],r=t[1],n=t[2],a=t[3];return Math.hypot(e,r,n,a)}
function Rr(t){var e=t[0],r=t[1],n=t[2],a=t[3];return e*e+r*r+n*n+a*a}function hl(t,e){return t[0]=-e[0],t[1]=-e[1],t[2]=
-e[2],t[3]=-e[3],t}function ll(t,e){return t[0]=1/e[0],t[1]=1/e[1],t[2]=1/e[2],t[3]=1/e[3],t}function In(t,e){var r=e[0],
n=e[1],a=e[2],s=e[3],i=r*r+n*n+a*a+s*s;return i>0&&(i=1/Math.sqrt(i)),t[0]=r*i,t[1]=n*i,t[2]=a*i,t[3]=s*i,t}function Pn(t,e){
return t[0]*e[0]+t[1]*e[1]+t[2]*e[2]+t[3]*e[3]}function pl(t,e,r,n){var a=r[0]*n[1]-r[1]*n[0],s=r[0]*n[2]-r[2]*n[0],i=r[0]*
n[3]-r[3]*n[0],o=r[1]*n[2]-r[2]*n[1],f=r[1]*n[3]-r[3]*n[1],c=r[2]*n[3]-r[3]*n[2],u=e[0],h=e[1],l=e[2],p=e[3];return t[0]=
h*c-l*f+p*o,t[1]=-(u*c)+l*i-p*s,t[2]=u*f-h*i+p*a,t[3]=-(u*o)+h*s-l*a,t}function bn(t,e,r,n){var a=e[0],s=e[1],i=e[2],o=e[3];
return t[0]=a+n*(r[0]-a),t[1]=s+n*(r[1]-s),t[2]=i+n*(r[2]-i),t[3]=o+n*(r[3]-o),t}function vl(t,e){e=e||1;var r,n,a,s,i,o;
do r=Le()*2-1,n=Le()*2-1,i=r*r+n*n;while(i>=1);do a=Le()*2-1,s=Le()*2-1,o=a*a+s*s;while(o>=1);var f=Math.sqrt((1-i)/o);return t[0]=
e*r,t[1]=e*n,t[2]=e*a*f,t[3]=e*s*f,t}function Tl(t,e,r){var n=e[0],a=e[1],s=e[2],i=e[3];return t[0]=r[0]*n+r[4]*a+r[8]*s+
r[12]*i,t[1]=r[1]*n+r[5]*a+r[9]*s+r[13]*i,t[2]=r[2]*n+r[6]*a+r[10]*s+r[14]*i,t[3]=r[3]*n+r[7]*a+r[11]*s+r[15]*i,t}function yl(t,e,r){
var n=e[0],a=e[1],s=e[2],i=r[0],o=r[1],f=r[2],c=r[3],u=c*n+o*s-f*a,h=c*a+f*n-i*s,l=c*s+i*a-o*n,p=-i*n-o*a-f*s;return t[0]=
u*c+p*-i+h*-f-l*-o,t[1]=h*c+p*-o+l*-i-u*-f,t[2]=l*c+p*-f+u*-o-h*-i,t[3]=e[3],t}function xl(t){return t[0]=0,t[1]=0,t[2]=
0,t[3]=0,t}function Cl(t){return"vec4("+t[0]+", "+t[1]+", "+t[2]+", "+t[3]+")"}function ea(t,e){return t[0]===e[0]&&t[1]===
e[1]&&t[2]===e[2]&&t[3]===e[3]}function ta(t,e){var r=t[0],n=t[1],a=t[2],s=t[3],i=e[0],o=e[1],f=e[2],c=e[3];return Math.
abs(r-i)<=W*Math.max(1,Math.abs(r),Math.abs(i))&&Math.abs(n-o)<=W*Math.max(1,Math.abs(n),Math.abs(o))&&Math.abs(a-f)<=W*
Math.max(1,Math.abs(a),Math.abs(f))&&Math.abs(s-c)<=W*Math.max(1,Math.abs(s),Math.abs(c))}var Sl=xi,Ml=Ci,dl=Si,El=Mi,Rl=di,
wl=Er,Ol=Rr,Ll=(function(){var t=yi();return function(e,r,n,a,s,i){var o,f;for(r||(r=4),n||(n=0),a?f=Math.min(a*r+n,e.length):
f=e.length,o=n;o<f;o+=r)t[0]=e[o],t[1]=e[o+1],t[2]=e[o+2],t[3]=e[o+3],s(t,t,i),e[o]=t[0],e[o+1]=t[1],e[o+2]=t[2],e[o+3]=
t[3];return e}})();function ra(){var t=new J(4);return J!=Float32Array&&(t[0]=0,t[1]=0,t[2]=0),t[3]=1,t}function Dl(t){return t[0]=0,t[1]=0,
t[2]=0,t[3]=1,t}function Ei(t,e,r){r=r*.5;var n=Math.sin(r);return t[0]=n*e[0],t[1]=n*e[1],t[2]=n*e[2],t[3]=Math.cos(r),
t}function _l(t,e){var r=Math.acos(e[3])*2,n=Math.sin(r/2);return n>W?(t[0]=e[0]/n,t[1]=e[1]/n,t[2]=e[2]/n):(t[0]=1,t[1]=
0,t[2]=0),r}function ml(t,e){var r=_i(t,e);return Math.acos(2*r*r-1)}function Ri(t,e,r){var n=e[0],a=e[1],s=e[2],i=e[3],
o=r[0],f=r[1],c=r[2],u=r[3];return t[0]=n*u+i*o+a*c-s*f,t[1]=a*u+i*f+s*o-n*c,t[2]=s*u+i*c+n*f-a*o,t[3]=i*u-n*o-a*f-s*c,t}
function Fl(t,e,r){r*=.5;var n=e[0],a=e[1],s=e[2],i=e[3],o=Math.sin(r),f=Math.cos(r);return t[0]=n*f+i*o,t[1]=a*f+s*o,t[2]=
s*f-a*o,t[3]=i*f-n*o,t}function Nl(t,e,r){r*=.5;var n=e[0],a=e[1],s=e[2],i=e[3],o=Math.sin(r),f=Math.cos(r);return t[0]=
n*f-s*o,t[1]=a*f+i*o,t[2]=s*f+n*o,t[3]=i*f-a*o,t}function Vl(t,e,r){r*=.5;var n=e[0],a=e[1],s=e[2],i=e[3],o=Math.sin(r),
f=Math.cos(r);return t[0]=n*f+a*o,t[1]=a*f-n*o,t[2]=s*f+i*o,t[3]=i*f-s*o,t}function Bl(t,e){var r=e[0],n=e[1],a=e[2];return t[0]=
r,t[1]=n,t[2]=a,t[3]=Math.sqrt(Math.abs(1-r*r-n*n-a*a)),t}function wi(t,e){var r=e[0],n=e[1],a=e[2],s=e[3],i=Math.sqrt(r*
r+n*n+a*a),o=Math.exp(s),f=i>0?o*Math.sin(i)/i:0;return t[0]=r*f,t[1]=n*f,t[2]=a*f,t[3]=o*Math.cos(i),t}function Oi(t,e){
var r=e[0],n=e[1],a=e[2],s=e[3],i=Math.sqrt(r*r+n*n+a*a),o=i>0?Math.atan2(i,s)/i:0;return t[0]=r*o,t[1]=n*o,t[2]=a*o,t[3]=
.5*Math.log(r*r+n*n+a*a+s*s),t}function Ul(t,e,r){return Oi(t,e),Di(t,t,r),wi(t,t),t}function wr(t,e,r,n){var a=e[0],s=e[1],
i=e[2],o=e[3],f=r[0],c=r[1],u=r[2],h=r[3],l,p,x,g,y;return p=a*f+s*c+i*u+o*h,p<0&&(p=-p,f=-f,c=-c,u=-u,h=-h),1-p>W?(l=Math.
acos(p),x=Math.sin(l),g=Math.sin((1-n)*l)/x,y=Math.sin(n*l)/x):(g=1-n,y=n),t[0]=g*a+y*f,t[1]=g*s+y*c,t[2]=g*i+y*u,t[3]=g*
o+y*h,t}function Gl(t){var e=Le(),r=Le(),n=Le(),a=Math.sqrt(1-e),s=Math.sqrt(e);return t[0]=a*Math.sin(2*Math.PI*r),t[1]=
a*Math.cos(2*Math.PI*r),t[2]=s*Math.sin(2*Math.PI*n),t[3]=s*Math.cos(2*Math.PI*n),t}function kl(t,e){var r=e[0],n=e[1],a=e[2],
s=e[3],i=r*r+n*n+a*a+s*s,o=i?1/i:0;return t[0]=-r*o,t[1]=-n*o,t[2]=-a*o,t[3]=s*o,t}function zl(t,e){return t[0]=-e[0],t[1]=
-e[1],t[2]=-e[2],t[3]=e[3],t}function Li(t,e){var r=e[0]+e[4]+e[8],n;if(r>0)n=Math.sqrt(r+1),t[3]=.5*n,n=.5/n,t[0]=(e[5]-
e[7])*n,t[1]=(e[6]-e[2])*n,t[2]=(e[1]-e[3])*n;else{var a=0;e[4]>e[0]&&(a=1),e[8]>e[a*3+a]&&(a=2);var s=(a+1)%3,i=(a+2)%3;
n=Math.sqrt(e[a*3+a]-e[s*3+s]-e[i*3+i]+1),t[a]=.5*n,n=.5/n,t[3]=(e[s*3+i]-e[i*3+s])*n,t[s]=(e[s*3+a]+e[a*3+s])*n,t[i]=(e[i*
3+a]+e[a*3+i])*n}return t}function Hl(t,e,r,n){var a=.5*Math.PI/180;e*=a,r*=a,n*=a;var s=Math.sin(e),i=Math.cos(e),o=Math.
sin(r),f=Math.cos(r),c=Math.sin(n),u=Math.cos(n);return t[0]=s*f*u-i*o*c,t[1]=i*o*u+s*f*c,t[2]=i*f*c-s*o*u,t[3]=i*f*u+s*
o*c,t}function Wl(t){return"quat("+t[0]+", "+t[1]+", "+t[2]+", "+t[3]+")"}var Al=Xn,jl=Yn,Kl=qn,$l=Zn,Xl=Qn,Yl=Ri,Di=Jn,
_i=Pn,ql=bn,mi=Er,Zl=mi,Fi=Rr,Ql=Fi,na=In,Jl=ea,Il=ta,Pl=(function(){var t=Sr(),e=Mr(1,0,0),r=Mr(0,1,0);return function(n,a,s){
var i=dr(a,s);return i<-.999999?(Vt(t,e,a),$n(t)<1e-6&&Vt(t,r,a),Kn(t,t),Ei(n,t,Math.PI),n):i>.999999?(n[0]=0,n[1]=0,n[2]=
0,n[3]=1,n):(Vt(t,a,s),n[0]=t[0],n[1]=t[1],n[2]=t[2],n[3]=1+i,na(n,n))}})(),bl=(function(){var t=ra(),e=ra();return function(r,n,a,s,i,o){
return wr(t,n,i,o),wr(e,a,s,o),wr(r,t,e,2*o*(1-o)),r}})(),e1=(function(){var t=jn();return function(e,r,n,a){return t[0]=
n[0],t[3]=n[1],t[6]=n[2],t[1]=a[0],t[4]=a[1],t[7]=a[2],t[2]=-r[0],t[5]=-r[1],t[8]=-r[2],na(e,Li(e,t))}})();function t1(t,e){e.classHierarchy.push("vtkOpenGLCamera"),t.buildPass=r=>{r&&(e._openGLRenderer=t.getFirstAncestorOfType(
"vtkOpenGLRenderer"),e._openGLRenderWindow=e._openGLRenderer.getParent(),e.context=e._openGLRenderWindow.getContext())},
t.opaquePass=r=>{if(r){let n=e._openGLRenderer.getTiledSizeAndOrigin();e.context.viewport(n.lowerLeftU,n.lowerLeftV,n.usize,
n.vsize),e.context.scissor(n.lowerLeftU,n.lowerLeftV,n.usize,n.vsize)}},t.translucentPass=t.opaquePass,t.zBufferPass=t.opaquePass,
t.opaqueZBufferPass=t.opaquePass,t.volumePass=t.opaquePass,t.getKeyMatrices=r=>{if(r!==e.lastRenderer||e._openGLRenderWindow.
getMTime()>e.keyMatrixTime.getMTime()||t.getMTime()>e.keyMatrixTime.getMTime()||r.getMTime()>e.keyMatrixTime.getMTime()||
e.renderable.getMTime()>e.keyMatrixTime.getMTime()){e.renderable.getViewMatrix(e.keyMatrices.wcvc),ce.fromMat4(e.keyMatrices.
normalMatrix,e.keyMatrices.wcvc),ce.invert(e.keyMatrices.normalMatrix,e.keyMatrices.normalMatrix),_.transpose(e.keyMatrices.
wcvc,e.keyMatrices.wcvc);let n=e._openGLRenderer.getAspectRatio();_.copy(e.keyMatrices.vcpc,e.renderable.getProjectionMatrix(
n,-1,1)),_.transpose(e.keyMatrices.vcpc,e.keyMatrices.vcpc),_.multiply(e.keyMatrices.wcpc,e.keyMatrices.vcpc,e.keyMatrices.
wcvc),e.keyMatrixTime.modified(),e.lastRenderer=r}return e.keyMatrices}}var r1={context:null,lastRenderer:null,keyMatrixTime:null,
keyMatrices:null};function n1(t,e,r={}){Object.assign(e,r1,r),we.extend(t,e,r),e.keyMatrixTime={},xe(e.keyMatrixTime),e.
keyMatrices={normalMatrix:new Float64Array(9),vcpc:new Float64Array(16),wcvc:new Float64Array(16),wcpc:new Float64Array(
16)},Te(t,e,["context","keyMatrixTime"]),t1(t,e)}var a1=pe(n1);Oe("vtkCamera",a1);var{vtkDebugMacro:s1}=Xe;function i1(t,e){e.classHierarchy.push("vtkOpenGLRenderer"),t.buildPass=r=>{if(r){if(!e.renderable)
return;e.renderable.updateLightGeometry(),t.updateLights(),t.prepareNodes(),t.addMissingNode(e.renderable.getActiveCamera()),
t.addMissingNodes(e.renderable.getViewPropsWithNestedProps(),!0),t.removeUnusedNodes()}},t.updateLights=()=>{let r=0,n=e.
renderable.getLightsByReference();for(let a=0;a<n.length;++a)n[a].getSwitch()>0&&r++;return r||(s1("No lights are on, cr\
eating one."),e.renderable.createLight()),r},t.zBufferPass=r=>{if(r){let n=0,a=e.context;e.renderable.getTransparent()||
(e.context.clearColor(1,0,0,1),n|=a.COLOR_BUFFER_BIT),e.renderable.getPreserveDepthBuffer()||(a.clearDepth(1),n|=a.DEPTH_BUFFER_BIT,
e.context.depthMask(!0));let s=t.getTiledSizeAndOrigin();a.enable(a.SCISSOR_TEST),a.scissor(s.lowerLeftU,s.lowerLeftV,s.
usize,s.vsize),a.viewport(s.lowerLeftU,s.lowerLeftV,s.usize,s.vsize),a.colorMask(!0,!0,!0,!0),n&&a.clear(n),a.enable(a.DEPTH_TEST)}},
t.opaqueZBufferPass=r=>t.zBufferPass(r),t.cameraPass=r=>{r&&t.clear()},t.getAspectRatio=()=>{let r=e._parent.getSizeByReference(),
n=e.renderable.getViewportByReference();return r[0]*(n[2]-n[0])/((n[3]-n[1])*r[1])},t.getTiledSizeAndOrigin=()=>{let r=e.
renderable.getViewportByReference(),n=[0,0,1,1],a=r[0]-n[0],s=r[1]-n[1],i=e._parent.normalizedDisplayToDisplay(a,s),o=Math.
round(i[0]),f=Math.round(i[1]),c=r[2]-n[0],u=r[3]-n[1],h=e._parent.normalizedDisplayToDisplay(c,u),l=Math.round(h[0])-o,
p=Math.round(h[1])-f;return l<0&&(l=0),p<0&&(p=0),{usize:l,vsize:p,lowerLeftU:o,lowerLeftV:f}},t.clear=()=>{let r=0,n=e.
context;if(!e.renderable.getTransparent()){let s=e.renderable.getBackgroundByReference();n.clearColor(s[0],s[1],s[2],s[3]),
r|=n.COLOR_BUFFER_BIT}e.renderable.getPreserveDepthBuffer()||(n.clearDepth(1),r|=n.DEPTH_BUFFER_BIT,n.depthMask(!0)),n.colorMask(
!0,!0,!0,!0);let a=t.getTiledSizeAndOrigin();n.enable(n.SCISSOR_TEST),n.scissor(a.lowerLeftU,a.lowerLeftV,a.usize,a.vsize),
n.viewport(a.lowerLeftU,a.lowerLeftV,a.usize,a.vsize),r&&n.clear(r),n.enable(n.DEPTH_TEST)},t.releaseGraphicsResources=()=>{
e.selector!==null&&e.selector.releaseGraphicsResources(),e.renderable&&e.renderable.getViewProps().forEach(r=>{r.modified()})},
t.setOpenGLRenderWindow=r=>{e._openGLRenderWindow!==r&&(t.releaseGraphicsResources(),e._openGLRenderWindow=r,e.context=null,
r&&(e.context=e._openGLRenderWindow.getContext()))}}var o1={context:null,_openGLRenderWindow:null,selector:null};function f1(t,e,r={}){
Object.assign(e,o1,r),we.extend(t,e,r),Se(t,e,["shaderCache"]),Te(t,e,["selector"]),Ye(t,e,["openGLRenderWindow"]),i1(t,
e)}var c1=pe(f1,"vtkOpenGLRenderer");Oe("vtkRenderer",c1);function u1(t,e){e.classHierarchy.push("vtkOpenGLActor"),t.buildPass=r=>{if(r){e._openGLRenderWindow=t.getLastAncestorOfType(
"vtkOpenGLRenderWindow"),e._openGLRenderer=t.getFirstAncestorOfType("vtkOpenGLRenderer"),e.context=e._openGLRenderWindow.
getContext(),t.prepareNodes(),t.addMissingNodes(e.renderable.getTextures()),t.addMissingNode(e.renderable.getMapper()),t.
removeUnusedNodes(),e.ogltextures=null,e.activeTextures=null;for(let n=0;n<e.children.length;n++){let a=e.children[n];a.
isA("vtkOpenGLTexture")?(e.ogltextures||(e.ogltextures=[]),e.ogltextures.push(a)):e.oglmapper=a}}},t.traverseZBufferPass=
r=>{!e.renderable||!e.renderable.getNestedVisibility()||e._openGLRenderer.getSelector()&&!e.renderable.getNestedPickable()||
(t.apply(r,!0),e.oglmapper.traverse(r),t.apply(r,!1))},t.traverseOpaqueZBufferPass=r=>t.traverseOpaquePass(r),t.traverseOpaquePass=
r=>{!e.renderable||!e.renderable.getNestedVisibility()||!e.renderable.getIsOpaque()||e._openGLRenderer.getSelector()&&!e.
renderable.getNestedPickable()||(t.apply(r,!0),e.oglmapper.traverse(r),t.apply(r,!1))},t.traverseTranslucentPass=r=>{!e.
renderable||!e.renderable.getNestedVisibility()||e.renderable.getIsOpaque()||e._openGLRenderer.getSelector()&&!e.renderable.
getNestedPickable()||(t.apply(r,!0),e.oglmapper.traverse(r),t.apply(r,!1))},t.activateTextures=()=>{if(e.ogltextures){e.
activeTextures=[];for(let r=0;r<e.ogltextures.length;r++){let n=e.ogltextures[r];n.render(),n.getHandle()&&e.activeTextures.
push(n)}}},t.queryPass=(r,n)=>{if(r){if(!e.renderable||!e.renderable.getVisibility())return;e.renderable.getIsOpaque()?n.
incrementOpaqueActorCount():n.incrementTranslucentActorCount()}},t.zBufferPass=(r,n)=>t.opaquePass(r,n),t.opaqueZBufferPass=
(r,n)=>t.opaquePass(r,n),t.opaquePass=(r,n)=>{if(r)e.context.depthMask(!0),t.activateTextures();else{if(e.activeTextures)
for(let a=0;a<e.activeTextures.length;a++)e.activeTextures[a].deactivate();e._openGLRenderWindow.disableCullFace()}},t.translucentPass=
(r,n)=>{if(r)e.context.depthMask(e._openGLRenderer.getSelector()&&e.renderable.getNestedPickable()),t.activateTextures();else{
if(e.activeTextures)for(let a=0;a<e.activeTextures.length;a++)e.activeTextures[a].deactivate();e._openGLRenderWindow.disableCullFace()}},
t.getKeyMatrices=()=>(e.renderable.getMTime()>e.keyMatrixTime.getMTime()&&(e.renderable.computeMatrix(),_.copy(e.keyMatrices.
mcwc,e.renderable.getMatrix()),_.transpose(e.keyMatrices.mcwc,e.keyMatrices.mcwc),e.renderable.getIsIdentity()?ce.identity(
e.keyMatrices.normalMatrix):(ce.fromMat4(e.keyMatrices.normalMatrix,e.keyMatrices.mcwc),ce.invert(e.keyMatrices.normalMatrix,
e.keyMatrices.normalMatrix),ce.transpose(e.keyMatrices.normalMatrix,e.keyMatrices.normalMatrix)),e.keyMatrixTime.modified()),
e.keyMatrices)}var g1={context:null,keyMatrixTime:null,keyMatrices:null,activeTextures:null};function h1(t,e,r={}){Object.
assign(e,g1,r),we.extend(t,e,r),e.keyMatrixTime={},xe(e.keyMatrixTime,{mtime:0}),e.keyMatrices={normalMatrix:ce.identity(
new Float64Array(9)),mcwc:_.identity(new Float64Array(16))},Te(t,e,["context"]),Se(t,e,["activeTextures"]),u1(t,e)}var l1=pe(
h1);Oe("vtkActor",l1);var Ni=[1,0,0,0,0,1,0,0,0,0,1,0,0,0,0,1],Vi=[1,0,0,0,1,0,0,0,1],vt=1e-6;var Pi=ur(Ji(),1);var{vtkErrorMacro:bi,vtkWarningMacro:nt}=E,eo=0,Ii=20;function Gt(t){return()=>bi(`vtkMath::${t} - NOT IMPLEMENTED`)}function Ut(t,e,r,n){
let a;for(let s=0;s<e;s++)a=t[r*e+s],t[r*e+s]=t[n*e+s],t[n*e+s]=a}function Bt(t,e,r,n){let a;for(let s=0;s<e;s++)a=t[s*e+
r],t[s*e+r]=t[s*e+n],t[s*e+n]=a}function Q(t=3){let e=Array(t);for(let r=0;r<t;++r)e[r]=0;return e}var S1=()=>Math.PI;function M1(t,e){
return e>1023?t*2**1023*2**(e-1023):e<-1074?t*2**-1074*2**(e+1074):t*2**e}function P(t){return t/180*Math.PI}function pa(t){
return t*180/Math.PI}var{round:d1,floor:E1,ceil:R1,min:w1,max:O1}=Math;function L1(t,e=0,r=1){let n=1/0;for(let a=e,s=t.
length;a<s;a+=r)t[a]<n&&(n=t[a]);return n}function D1(t,e=0,r=1){let n=-1/0;for(let a=e,s=t.length;a<s;a+=r)n<t[a]&&(n=t[a]);
return n}function _1(t,e=0,r=1){let n=1/0,a=-1/0;for(let s=e,i=t.length;s<i;s+=r)t[s]<n&&(n=t[s]),a<t[s]&&(a=t[s]);return[
n,a]}var m1=Gt("ceilLog2"),F1=Gt("factorial");function kt(t){let e=1;for(;e<t;)e*=2;return e}function N1(t){return t===kt(
t)}function V1(t,e){let r=1;for(let n=1;n<=e;++n)r*=(t-n+1)/n;return Math.floor(r)}function B1(t,e){if(t<e)return 0;let r=Q(
e);for(let n=0;n<e;++n)r[n]=n;return r}function U1(t,e,r){let n=0;for(let a=e-1;a>=0;--a)if(r[a]<t-e+a){let s=r[a]+1;for(;a<
e;)r[a++]=s++;n=1;break}return n}function G1(t){(0,Pi.default)(`${t}`,{global:!0}),eo=t}function k1(){return eo}function z1(t=0,e=1){
return t+(e-t)*Math.random()}var H1=Gt("gaussian");function ke(t,e,r){return r[0]=t[0]+e[0],r[1]=t[1]+e[1],r[2]=t[2]+e[2],
r}function b(t,e,r){return r[0]=t[0]-e[0],r[1]=t[1]-e[1],r[2]=t[2]-e[2],r}function to(t,e){return t[0]*=e,t[1]*=e,t[2]*=
e,t}function ro(t,e){return t[0]*=e,t[1]*=e,t}function mr(t,e,r,n){return n[0]=t[0]+e[0]*r,n[1]=t[1]+e[1]*r,n[2]=t[2]+e[2]*
r,n}function W1(t,e,r,n){return n[0]=t[0]+e[0]*r,n[1]=t[1]+e[1]*r,n}function U(t,e){return t[0]*e[0]+t[1]*e[1]+t[2]*e[2]}
function A1(t,e,r){r[0]=t[0]*e[0],r[1]=t[0]*e[1],r[2]=t[0]*e[2],r[3]=t[1]*e[0],r[4]=t[1]*e[1],r[5]=t[1]*e[2],r[6]=t[2]*e[0],
r[7]=t[2]*e[1],r[8]=t[2]*e[2]}function ue(t,e,r){let n=t[1]*e[2]-t[2]*e[1],a=t[2]*e[0]-t[0]*e[2],s=t[0]*e[1]-t[1]*e[0];return r[0]=
n,r[1]=a,r[2]=s,r}function Me(t,e=3){switch(e){case 1:return Math.abs(t);case 2:return Math.sqrt(t[0]*t[0]+t[1]*t[1]);case 3:
return Math.sqrt(t[0]*t[0]+t[1]*t[1]+t[2]*t[2]);default:{let r=0;for(let n=0;n<e;n++)r+=t[n]*t[n];return Math.sqrt(r)}}}
function ve(t){let e=Me(t);return e!==0&&(t[0]/=e,t[1]/=e,t[2]/=e),e}function no(t){let e=Me(t,3);return e!==0&&(t[0]/=e,
t[1]/=e,t[2]/=e,t[3]/=e),e}function j1(t,e,r,n){let a=t[0]*t[0],s=t[1]*t[1],i=t[2]*t[2],o=Math.sqrt(a+s+i),f,c,u;a>s&&a>
i?(f=0,c=1,u=2):s>i?(f=1,c=2,u=0):(f=2,c=0,u=1);let h=t[f]/o,l=t[c]/o,p=t[u]/o,x=Math.sqrt(h*h+p*p);if(n!==0){let g=Math.
sin(n),y=Math.cos(n);e&&(e[f]=(p*y-h*l*g)/x,e[c]=g*x,e[u]=(-(h*y)-l*p*g)/x),r&&(r[f]=(-(p*g)-h*l*y)/x,r[c]=y*x,r[u]=(h*g-
l*p*y)/x)}else e&&(e[f]=p/x,e[c]=0,e[u]=-h/x),r&&(r[f]=-h*l/x,r[c]=x,r[u]=-l*p/x)}function K1(t,e,r){let n=U(e,e);if(n===
0)return r[0]=0,r[1]=0,r[2]=0,!1;let a=U(t,e)/n;for(let s=0;s<3;s++)r[s]=e[s];return to(r,a),!0}function ua(t,e){return t[0]*
e[0]+t[1]*e[1]}function $1(t,e,r){let n=ua(e,e);if(n===0)return r[0]=0,r[1]=0,!1;let a=ua(t,e)/n;for(let s=0;s<2;s++)r[s]=
e[s];return ro(r,a),!0}function ge(t,e){return(t[0]-e[0])*(t[0]-e[0])+(t[1]-e[1])*(t[1]-e[1])+(t[2]-e[2])*(t[2]-e[2])}function X1(t,e){
let r=[0,0,0];return ue(t,e,r),Math.atan2(Me(r),U(t,e))}function Y1(t,e,r){let n=Math.abs(t-r);return 1/Math.sqrt(2*Math.PI*e)*Math.exp(-(n**2)/(2*e))}function q1(t,e,r){let n=Math.
abs(t-r);return Math.exp(-(n**2)/(2*e))}function Z1(t,e,r){r[0]=t[0]*e[0],r[1]=t[0]*e[1],r[2]=t[1]*e[0],r[3]=t[1]*e[1]}function ao(t){
return Math.sqrt(t[0]*t[0]+t[1]*t[1])}function Q1(t){let e=ao(t);return e!==0&&(t[0]/=e,t[1]/=e),e}function I(...t){return t.length===2?t[0][0]*t[1][1]-t[1][0]*t[0][1]:t.length===4?t[0]*t[3]-t[1]*t[2]:NaN}function J1(t,e){
let r,n,a,s=[0,0,0];for(let i=0;i<3;i++)a=Math.abs(t[i*3]),(n=Math.abs(t[i*3+1]))>a&&(a=n),(n=Math.abs(t[i*3+2]))>a&&(a=
n),s[i]=1/a;a=s[0]*Math.abs(t[0]),r=0,(n=s[1]*Math.abs(t[3]))>=a&&(a=n,r=1),(n=s[2]*Math.abs(t[6]))>=a&&(r=2),r!==0&&(Ut(
t,3,r,0),s[r]=s[0]),e[0]=r,t[3]/=t[0],t[6]/=t[0],t[4]-=t[3]*t[1],t[7]-=t[6]*t[1],a=s[1]*Math.abs(t[4]),r=1,(n=s[2]*Math.
abs(t[7]))>=a&&(r=2,Ut(t,3,1,2),s[2]=s[1]),e[1]=r,t[7]/=t[4],t[5]-=t[3]*t[2],t[8]-=t[6]*t[2]+t[7]*t[5],e[2]=2}function I1(t,e,r){
let n=r[e[0]];r[e[0]]=r[0],r[0]=n,n=r[e[1]],r[e[1]]=r[1],r[1]=n-t[3]*r[0],n=r[e[2]],r[e[2]]=r[2],r[2]=n-t[6]*r[0]-t[7]*r[1],
r[2]/=t[8],r[1]=(r[1]-t[5]*r[2])/t[4],r[0]=(r[0]-t[1]*r[1]-t[2]*r[2])/t[0]}function P1(t,e,r){let n=t[0],a=t[1],s=t[2],i=t[3],
o=t[4],f=t[5],c=t[6],u=t[7],h=t[8],l=+I(o,u,f,h),p=-I(i,c,f,h),x=+I(i,c,o,u),g=-I(a,u,s,h),y=+I(n,c,s,h),C=-I(n,c,a,u),M=+I(
a,o,s,f),v=-I(n,i,s,f),T=+I(n,i,a,o),S=n*l+a*p+s*x,d=l*e[0]+g*e[1]+M*e[2],R=p*e[0]+y*e[1]+v*e[2],w=x*e[0]+C*e[1]+T*e[2];
r[0]=d/S,r[1]=R/S,r[2]=w/S}function b1(t,e,r){let n=t[0]*e[0]+t[1]*e[1]+t[2]*e[2],a=t[3]*e[0]+t[4]*e[1]+t[5]*e[2],s=t[6]*
e[0]+t[7]*e[1]+t[8]*e[2];r[0]=n,r[1]=a,r[2]=s}function ga(t,e,r){let n=[...t],a=[...e];for(let s=0;s<3;s++)r[s]=n[0]*a[s]+
n[1]*a[s+3]+n[2]*a[s+6],r[s+3]=n[3]*a[s]+n[4]*a[s+3]+n[5]*a[s+6],r[s+6]=n[6]*a[s]+n[7]*a[s+3]+n[8]*a[s+6]}function ep(t,e,r,n,a,s,i){
n!==a&&bi("Number of columns of A must match number of rows of B.");let o=[...t],f=[...e];for(let c=0;c<r;c++)for(let u=0;u<
s;u++){i[c*s+u]=0;for(let h=0;h<n;h++)i[c*s+u]+=o[c*n+h]*f[u+s*h]}}function Tt(t,e){let r;r=t[3],e[3]=t[1],e[1]=r,r=t[6],
e[6]=t[2],e[2]=r,r=t[7],e[7]=t[5],e[5]=r,e[0]=t[0],e[4]=t[4],e[8]=t[8]}function tp(t,e){let r=t[0],n=t[1],a=t[2],s=t[3],
i=t[4],o=t[5],f=t[6],c=t[7],u=t[8],h=+I(i,c,o,u),l=-I(s,f,o,u),p=+I(s,f,i,c),x=-I(n,c,a,u),g=+I(r,f,a,u),y=-I(r,f,n,c),C=+I(
n,i,a,o),M=-I(r,s,a,o),v=+I(r,s,n,i),T=r*h+n*l+a*p;T===0&&nt("Matrix has 0 determinant"),e[0]=h/T,e[3]=l/T,e[6]=p/T,e[1]=
x/T,e[4]=g/T,e[7]=y/T,e[2]=C/T,e[5]=M/T,e[8]=v/T}function Fr(t){return t[0]*t[4]*t[8]+t[3]*t[7]*t[2]+t[6]*t[1]*t[5]-t[0]*
t[7]*t[5]-t[3]*t[1]*t[8]-t[6]*t[4]*t[2]}function so(t,e,r=vt){if(t.length!==e.length)return!1;function n(a,s){return Math.
abs(a-e[s])<=r}return t.every(n)}var yt=so;function io(t){for(let e=0;e<3;e++)t[e*3]=t[e*3+1]=t[e*3+2]=0,t[e*3+e]=1}function oo(t,e){
for(let r=0;r<t;r++){for(let n=0;n<t;n++)e[r*t+n]=0;e[r*t+r]=1}return e}function rp(t,e=vt){return yt(t,Ni,e)}function np(t,e=vt){
return yt(t,Vi,e)}function fo(t,e){let r=t[0]*t[0],n=t[0]*t[1],a=t[0]*t[2],s=t[0]*t[3],i=t[1]*t[1],o=t[2]*t[2],f=t[3]*t[3],
c=t[1]*t[2],u=t[1]*t[3],h=t[2]*t[3],l=i+o+f,p=1/(r+l),x=(r-l)*p;p*=2,e[0]=i*p+x,e[3]=(c+s)*p,e[6]=(u-a)*p,e[1]=(c-s)*p,e[4]=
o*p+x,e[7]=(h+n)*p,e[2]=(u+a)*p,e[5]=(h-n)*p,e[8]=f*p+x}function Dr(t,e=0){if(!`${t}`.includes("e"))return+`${Math.round(
`${t}e+${e}`)}e-${e}`;let r=`${t}`.split("e"),n="";return+r[1]+e>0&&(n="+"),+`${Math.round(`${+r[0]}e${n}${+r[1]+e}`)}e-${e}`}
function Nr(t,e=[0,0,0],r=0){return e[0]=Dr(t[0],r),e[1]=Dr(t[1],r),e[2]=Dr(t[2],r),e}function zt(t,e,r,n){let a,s,i,o,f,
c,u,h,l,p,x,g,y,C,M,v,T=Q(e),S=Q(e),d=(w,L,O)=>{C=w[L],y=w[O],w[L]=C-g*(y+C*p),w[O]=y+g*(C-y*p)};for(oo(e,n),f=0;f<e;f++)
T[f]=r[f]=t[f+f*e],S[f]=0;for(a=0;a<Ii;a++){for(x=0,f=0;f<e-1;f++)for(o=f+1;o<e;o++)x+=Math.abs(t[f*e+o]);if(x===0)break;
for(a<3?u=.2*x/(e*e):u=0,f=0;f<e-1;f++)for(o=f+1;o<e;o++)if(C=100*Math.abs(t[f*e+o]),a>3&&Math.abs(r[f])+C===Math.abs(r[f])&&
Math.abs(r[o])+C===Math.abs(r[o]))t[f*e+o]=0;else if(Math.abs(t[f*e+o])>u){for(y=r[o]-r[f],Math.abs(y)+C===Math.abs(y)?l=
t[f*e+o]/y:(h=.5*y/t[f*e+o],l=1/(Math.abs(h)+Math.sqrt(1+h*h)),h<0&&(l=-l)),M=1/Math.sqrt(1+l*l),g=l*M,p=g/(1+M),y=l*t[f*
e+o],S[f]-=y,S[o]+=y,r[f]-=y,r[o]+=y,t[f*e+o]=0,s=0;s<=f-1;s++)d(t,s*e+f,s*e+o);for(s=f+1;s<=o-1;s++)d(t,f*e+s,s*e+o);for(s=
o+1;s<e;s++)d(t,f*e+s,o*e+s);for(s=0;s<e;s++)d(n,s*e+f,s*e+o)}for(f=0;f<e;f++)T[f]+=S[f],r[f]=T[f],S[f]=0}if(a>=Ii)return nt(
"vtkMath::Jacobi: Error extracting eigenfunctions"),0;for(s=0;s<e-1;s++){for(i=s,v=r[i],a=s+1;a<e;a++)(r[a]>=v||Math.abs(
r[a]-v)<1e-12)&&(i=a,v=r[i]);i!==s&&(r[i]=r[s],r[s]=v,Bt(n,e,s,i))}let R=(e>>1)+(e&1);for(c=0,a=0;a<e*e;a++)n[a]>=0&&c++;
if(c<R)for(a=0;a<e;a++)n[a*e+s]*=-1;return 1}function co(t,e){let r=[0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0];r[0]=t[0]+t[4]+t[8],
r[5]=t[0]-t[4]-t[8],r[10]=-t[0]+t[4]-t[8],r[15]=-t[0]-t[4]+t[8],r[1]=r[4]=t[7]-t[5],r[2]=r[8]=t[2]-t[6],r[3]=r[12]=t[3]-
t[1],r[6]=r[9]=t[3]+t[1],r[7]=r[13]=t[2]+t[6],r[11]=r[14]=t[7]+t[5];let n=[0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0],a=[0,0,0,0];
zt([...r],4,a,n),e[0]=n[0],e[1]=n[4],e[2]=n[8],e[3]=n[12]}function ap(t,e,r){let n=t[0]*e[0],a=t[0]*e[1],s=t[0]*e[2],i=t[0]*
e[3],o=t[1]*e[0],f=t[1]*e[1],c=t[1]*e[2],u=t[1]*e[3],h=t[2]*e[0],l=t[2]*e[1],p=t[2]*e[2],x=t[2]*e[3],g=t[3]*e[0],y=t[3]*
e[1],C=t[3]*e[2],M=t[3]*e[3];r[0]=n-f-p-M,r[1]=a+o+x-C,r[2]=s-u+h+y,r[3]=i+c-l+g}function uo(t,e){for(let l=0;l<9;l++)e[l]=
t[l];let r=Q(3),n=Q(3),a;for(let l=0;l<3;l++){let p=Math.abs(e[l*3]),x=Math.abs(e[l*3+1]),g=Math.abs(e[l*3+2]);a=x>p?x:p,
a=g>a?g:a,r[l]=1,a!==0&&(r[l]/=a)}let s=Math.abs(e[0])*r[0],i=Math.abs(e[3])*r[1],o=Math.abs(e[6])*r[2];n[0]=0,a=s,i>=a&&
(a=i,n[0]=1),o>=a&&(n[0]=2),n[0]!==0&&(Bt(e,3,n[0],0),r[n[0]]=r[0]);let f=Math.abs(e[4])*r[1],c=Math.abs(e[7])*r[2];n[1]=
1,a=f,c>=a&&(n[1]=2,Bt(e,3,1,2)),n[2]=2;let u=0;if(Fr(e)<0){u=1;for(let l=0;l<9;l++)e[l]=-e[l]}let h=Q(4);if(co(e,h),fo(
h,e),u)for(let l=0;l<9;l++)e[l]=-e[l];n[1]!==1&&Bt(e,3,n[1],1),n[0]!==0&&Bt(e,3,n[0],0)}function go(t,e,r){let n,a,s,i,o,
f;if(zt([...t],3,e,r),e[0]===e[1]&&e[0]===e[2]){io(r);return}for(Tt(r,r),n=0;n<3;n++)if(e[(n+1)%3]===e[(n+2)%3]){for(f=Math.
abs(r[n*3]),i=0,a=1;a<3;a++)f<(o=Math.abs(r[n*3+a]))&&(f=o,i=a);i!==n&&(o=e[i],e[i]=e[n],e[n]=o,Ut(r,3,n,i)),r[i*3+i]<0&&
(r[i*3]=-r[i*3],r[i*3+1]=-r[i*3+1],r[i*3+2]=-r[i*3+2]),a=(i+1)%3,s=(i+2)%3,r[a*3]=0,r[a*3+1]=0,r[a*3+2]=0,r[a*3+a]=1;let c=ue(
[r[i*3],r[i*3+1],r[i*3+2]],[r[a*3],r[a*3+1],r[a*3+2]],[]);ve(c);let u=ue(c,[r[i*3],r[i*3+1],r[i*3+2]],[]);for(let h=0;h<
3;h++)r[s*3+h]=c[h],r[a*3+h]=u[h];Tt(r,r);return}for(f=Math.abs(r[0]),i=0,n=1;n<3;n++)f<(o=Math.abs(r[n*3]))&&(f=o,i=n);
if(i!==0){let c=e[i];e[i]=e[0],e[0]=c,Ut(r,3,i,0)}if(Math.abs(r[4])<Math.abs(r[7])){let c=e[2];e[2]=e[1],e[1]=c,Ut(r,3,1,
2)}for(n=0;n<2;n++)r[n*3+n]<0&&(r[n*3]=-r[n*3],r[n*3+1]=-r[n*3+1],r[n*3+2]=-r[n*3+2]);Fr(r)<0&&(r[6]=-r[6],r[7]=-r[7],r[8]=
-r[8]),Tt(r,r)}function sp(t,e,r,n){let a,s=[...t],i=Fr(s);if(i<0)for(a=0;a<9;a++)s[a]=-s[a];uo(s,e),Tt(s,s),ga(s,e,n),go(
n,r,n),ga(e,n,e),Tt(n,n),i<0&&(r[0]=-r[0],r[1]=-r[1],r[2]=-r[2])}function va(t,e,r){let n,a,s,i,o=0,f,c,u,h=Q(r);for(n=0;n<
r;n++){for(i=0,a=0;a<r;a++)(u=Math.abs(t[n*r+a]))>i&&(i=u);if(i===0)return nt("Unable to factor linear system"),0;h[n]=1/
i}for(a=0;a<r;a++){for(n=0;n<a;n++){for(f=t[n*r+a],s=0;s<n;s++)f-=t[n*r+s]*t[s*r+a];t[n*r+a]=f}for(i=0,n=a;n<r;n++){for(f=
t[n*r+a],s=0;s<a;s++)f-=t[n*r+s]*t[s*r+a];t[n*r+a]=f,(c=h[n]*Math.abs(f))>=i&&(i=c,o=n)}if(a!==o){for(s=0;s<r;s++)c=t[o*
r+s],t[o*r+s]=t[a*r+s],t[a*r+s]=c;h[o]=h[a]}if(e[a]=o,Math.abs(t[a*r+a])<=1e-12)return nt("Unable to factor linear syste\
m"),0;if(a!==r-1)for(c=1/t[a*r+a],n=a+1;n<r;n++)t[n*r+a]*=c}return 1}function Ta(t,e,r,n){let a,s,i,o,f;for(i=-1,a=0;a<n;a++){
if(o=e[a],f=r[o],r[o]=r[a],i>=0)for(s=i;s<=a-1;s++)f-=t[a*n+s]*r[s];else f!==0&&(i=a);r[a]=f}for(a=n-1;a>=0;a--){for(f=r[a],
s=a+1;s<n;s++)f-=t[a*n+s]*r[s];r[a]=f/t[a*n+a]}}function ya(t,e,r){if(r===2){let a=Q(2),s=I(t[0],t[1],t[2],t[3]);return s===
0?0:(a[0]=(t[3]*e[0]-t[1]*e[1])/s,a[1]=(-(t[2]*e[0])+t[0]*e[1])/s,e[0]=a[0],e[1]=a[1],1)}if(r===1)return t[0]===0?0:(e[0]/=
t[0],1);let n=Q(r);return va(t,n,r)===0?0:(Ta(t,n,e,r),1)}function Vr(t,e,r,n=null,a=null){let s=n||Q(r),i=a||Q(r);if(va(
t,s,r,i)===0)return null;for(let o=0;o<r;o++){for(let f=0;f<r;f++)i[f]=0;i[o]=1,Ta(t,s,i,r);for(let f=0;f<r;f++)e[f*r+o]=
i[f]}return e}function ip(t,e){let r=+Number.MAX_VALUE,n=-Number.MAX_VALUE;for(let a=0;a<e;a++)for(let s=a;s<e;s++)Math.
abs(t[a*e+s])>n&&(n=Math.abs(t[a*e+s]));for(let a=0;a<e;a++)Math.abs(t[a*e+a])<r&&(r=Math.abs(t[a*e+a]));return r===0?Number.
MAX_VALUE:n/r}function op(t,e,r){return zt(t,3,e,r)}function ha(t,e,r,n){if(t<r)return nt("Insufficient number of sample\
s. Underdetermined."),0;let a,s,i,o=Q(r*r),f=Q(r),c=Q(r*r);for(i=0;i<t;i++)for(a=0;a<r;a++)for(s=a;s<r;s++)o[a*r+s]+=e[i*
r+a]*e[i*r+s];for(a=0;a<r;a++)for(s=0;s<a;s++)o[a*r+s]=o[s*r+a];for(zt(o,r,f,c),a=0;a<r;a++)n[a]=c[a*r+r-1];return 1}function fp(t,e,r,n,a,s,i=!0){
if(t<r||t<a)return nt("Insufficient number of samples. Underdetermined."),0;let o=Q(a),f=1,c,u=0,h,l,p,x=0;if(i){for(l=0;l<
a;l++)o[l]=1;for(h=0;h<t;h++)for(l=0;l<a;l++)Math.abs(n[h*a+l])>1e-12&&(f=0,o[l]=0);if(f&&a===1)return nt("Detected homo\
geneous system (Y=0), calling SolveHomogeneousLeastSquares()"),ha(t,e,r,s);if(f)x=1;else for(l=0;l<a;l++)o[l]&&(x=1)}x&&
(c=Q(r),u=ha(t,e,r,c));let g=Q(r*r),y=Q(r*r),C=Q(r*a);for(p=0;p<t;p++)for(h=0;h<r;h++){for(l=h;l<r;l++)g[h*r+l]+=e[p*r+h]*
e[p*r+l];for(l=0;l<a;l++)C[h*a+l]+=e[p*r+h]*n[p*a+l]}for(h=0;h<r;h++)for(l=0;l<h;l++)g[h*r+l]=g[l*r+h];let M=Vr(g,y,r);if(M)
for(h=0;h<r;h++)for(l=0;l<a;l++)for(s[h*a+l]=0,p=0;p<r;p++)s[h*a+l]+=y[h*r+p]*C[p*a+l];if(x){for(l=0;l<a;l++)if(o[l])for(h=
0;h<r;h++)s[h*a+l]=c[h*a]}return x?u&&M:M}function cp(t,e=[0,.5,1]){switch(t.length){case 3:return e[0]=parseInt(t[0],16)*
17/255,e[1]=parseInt(t[1],16)*17/255,e[2]=parseInt(t[2],16)*17/255,e;case 4:return e[0]=parseInt(t[1],16)*17/255,e[1]=parseInt(
t[2],16)*17/255,e[2]=parseInt(t[3],16)*17/255,e;case 6:return e[0]=parseInt(t.substr(0,2),16)/255,e[1]=parseInt(t.substr(
2,2),16)/255,e[2]=parseInt(t.substr(4,2),16)/255,e;case 7:return e[0]=parseInt(t.substr(1,2),16)/255,e[1]=parseInt(t.substr(
3,2),16)/255,e[2]=parseInt(t.substr(5,2),16)/255,e;case 9:return e[0]=parseInt(t.substr(1,2),16)/255,e[1]=parseInt(t.substr(
3,2),16)/255,e[2]=parseInt(t.substr(5,2),16)/255,e[3]=parseInt(t.substr(7,2),16)/255,e;default:return e}}function up(t,e){
let r,n,[a,s,i]=t,o=1/3,f=1/6,c=2/3,u=a,h=a;s>u?u=s:s<h&&(h=s),i>u?u=i:i<h&&(h=i);let l=u;l>0?n=(u-h)/u:n=0,n>0?(a===u?r=
f*(s-i)/(u-h):s===u?r=o+f*(i-a)/(u-h):r=c+f*(a-s)/(u-h),r<0&&(r+=1)):r=0,e[0]=r,e[1]=n,e[2]=l}function xa(t,e){let[r,n,a]=t,
s=1/3,i=1/6,o=2/3,f=5/6,c,u,h;r>i&&r<=s?(u=1,c=(s-r)/i,h=0):r>s&&r<=.5?(u=1,h=(r-s)/i,c=0):r>.5&&r<=o?(h=1,u=(o-r)/i,c=0):
r>o&&r<=f?(h=1,c=(r-o)/i,u=0):r>f&&r<=1?(c=1,h=(1-r)/i,u=0):(c=1,u=r/i,h=0),c=n*c+(1-n),u=n*u+(1-n),h=n*h+(1-n),c*=a,u*=
a,h*=a,e[0]=c,e[1]=u,e[2]=h}function ho(t,e){let[r,n,a]=t,s=(r+16)/116,i=n/500+s,o=s-a/200;s**3>.008856?s**=3:s=(s-16/116)/
7.787,i**3>.008856?i**=3:i=(i-16/116)/7.787,o**3>.008856?o**=3:o=(o-16/116)/7.787;let f=.9505,c=1,u=1.089;e[0]=f*i,e[1]=
c*s,e[2]=u*o}function lo(t,e){let[r,n,a]=t,s=.9505,i=1,o=1.089,f=r/s,c=n/i,u=a/o;f>.008856?f**=1/3:f=7.787*f+16/116,c>.008856?
c**=1/3:c=7.787*c+16/116,u>.008856?u**=1/3:u=7.787*u+16/116,e[0]=116*c-16,e[1]=500*(f-c),e[2]=200*(c-u)}function po(t,e){
let[r,n,a]=t,s=r*3.2406+n*-1.5372+a*-.4986,i=r*-.9689+n*1.8758+a*.0415,o=r*.0557+n*-.204+a*1.057;s>.0031308?s=1.055*s**(1/
2.4)-.055:s*=12.92,i>.0031308?i=1.055*i**(1/2.4)-.055:i*=12.92,o>.0031308?o=1.055*o**(1/2.4)-.055:o*=12.92;let f=s;f<i&&
(f=i),f<o&&(f=o),f>1&&(s/=f,i/=f,o/=f),s<0&&(s=0),i<0&&(i=0),o<0&&(o=0),e[0]=s,e[1]=i,e[2]=o}function vo(t,e){let[r,n,a]=t;
r>.04045?r=((r+.055)/1.055)**2.4:r/=12.92,n>.04045?n=((n+.055)/1.055)**2.4:n/=12.92,a>.04045?a=((a+.055)/1.055)**2.4:a/=
12.92,e[0]=r*.4124+n*.3576+a*.1805,e[1]=r*.2126+n*.7152+a*.0722,e[2]=r*.0193+n*.1192+a*.9505}function gp(t,e){let r=[0,0,
0];vo(t,r),lo(r,e)}function hp(t,e){let r=[0,0,0];ho(t,r),po(r,e)}function Ht(t){return t[0]=1,t[1]=-1,t[2]=1,t[3]=-1,t[4]=
1,t[5]=-1,t}function Wt(t){return!(t[1]-t[0]<0)}function lp(t,e,r){return r[0]=Math.min(t[0],e[0]),r[1]=Math.max(t[0],e[0]),
r[2]=Math.min(t[1],e[1]),r[3]=Math.max(t[1],e[1]),r[4]=Math.min(t[2],e[2]),r[5]=Math.max(t[2],e[2]),r}function _r(t,e,r){
return t<e?e:t>r?r:t}function Br(t,e,r,n=[0,0,0]){return n[0]=_r(t[0],e[0],r[0]),n[1]=_r(t[1],e[1],r[1]),n[2]=_r(t[2],e[2],
r[2]),n}function pp(t,e){let r=0;return e[0]!==e[1]&&(t<e[0]?r=e[0]:t>e[1]?r=e[1]:r=t,r=(r-e[0])/(e[1]-e[0])),r}var vp=Gt(
"GetScalarTypeFittingRange"),Tp=Gt("GetAdjustedScalarRange");function yp(t,e){if(!t||!e)return 0;for(let r=0;r<6;r+=2)if(t[r]<
e[r]||t[r]>e[r+1]||t[r+1]<e[r]||t[r+1]>e[r+1])return 0;return 1}function xp(t,e,r){if(!t||!e)return 0;for(let n=0;n<6;n+=
2)if(t[n]+r[n/2]<e[n]||t[n]-r[n/2]>e[n+1]||t[n+1]+r[n/2]<e[n]||t[n+1]-r[n/2]>e[n+1])return 0;return 1}function Cp(t,e,r){
if(!t||!e||!r)return 0;for(let n=0;n<3;n++)if(t[n]+r[n]<e[2*n]||t[n]-r[n]>e[2*n+1])return 0;return 1}function Sp(t,e,r,n){
let a=Q(3),s=Q(3),i=Q(3),o=Q(3),f=Q(3),c=Q(3);for(let T=0;T<3;++T)a[T]=t[T]-e[T],s[T]=e[T]-r[T],i[T]=r[T]-t[T],o[T]=-a[T],
f[T]=-s[T],c[T]=-i[T];let u=Me(o),h=Me(f),l=Me(i),p=Q(3);ue(a,s,p);let x=Me(p),g=u*h*l/(2*x),y=2*x*x,C=h*h*U(a,c)/y,M=l*
l*U(o,s)/y,v=u*u*U(i,f)/y;for(let T=0;T<3;++T)n[T]=C*t[T]+M*e[T]+v*r[T];return g}var Mp=1/0,dp=-1/0,Ep=t=>!Number.isFinite(
t),{isFinite:Rp,isNaN:la}=Number,Ur=la;function Ca(){return[].concat([Number.MAX_VALUE,-Number.MAX_VALUE,Number.MAX_VALUE,
-Number.MAX_VALUE,Number.MAX_VALUE,-Number.MAX_VALUE])}function wp(t){let e=-1,r=-1;for(let n=0;n<t.length;n++){let a=Math.
abs(t[n]);a>e&&(r=n,e=a)}return r}function Op(t){let e=1/0,r=-1;for(let n=0;n<t.length;n++){let a=Math.abs(t[n]);a<e&&(r=
n,e=a)}return r}function Lp(t,e=3){let r=new Array(e),n=new Array(e);for(let s=0;s<e;++s)r[s]=s,n[s]=s;for(let s=e-1;s>0;s--){
let i=-1/0,o=0,f=0;for(let c=0;c<=s;++c){let u=r[c];for(let h=0;h<=s;++h){let l=n[h],p=Math.abs(t[u+e*l]);p>i&&(i=p,o=c,
f=h)}}[r[s],r[o]]=[r[o],r[s]],[n[s],n[f]]=[n[f],n[s]]}let a=new Array(e*e).fill(0);for(let s=0;s<e;++s){let i=r[s]+e*n[s];
a[i]=t[i]<0?-1:1}return a}function To(t){let e=Math.floor(t*255);return e>15?e.toString(16):`0${e.toString(16)}`}function Dp(t,e="\
#"){return`${e}${t.map(To).join("")}`}function Lr(t){return Math.round(t*255)}function _p(t){return t.length===3?`rgb(${t.
map(Lr).join(", ")})`:`rgba(${Lr(t[0]||0)}, ${Lr(t[1]||0)}, ${Lr(t[2]||0)}, ${t[3]||0})`}var At={Pi:S1,ldexp:M1,radiansFromDegrees:P,
degreesFromRadians:pa,round:d1,floor:E1,ceil:R1,ceilLog2:m1,min:w1,max:O1,arrayMin:L1,arrayMax:D1,arrayRange:_1,isPowerOfTwo:N1,
nearestPowerOfTwo:kt,factorial:F1,binomial:V1,beginCombination:B1,nextCombination:U1,randomSeed:G1,getSeed:k1,random:z1,
gaussian:H1,add:ke,subtract:b,multiplyScalar:to,multiplyScalar2D:ro,multiplyAccumulate:mr,multiplyAccumulate2D:W1,dot:U,
outer:A1,cross:ue,norm:Me,normalize:ve,perpendiculars:j1,projectVector:K1,projectVector2D:$1,distance2BetweenPoints:ge,angleBetweenVectors:X1,
gaussianAmplitude:Y1,gaussianWeight:q1,dot2D:ua,outer2D:Z1,norm2D:ao,normalize2D:Q1,determinant2x2:I,LUFactor3x3:J1,LUSolve3x3:I1,
linearSolve3x3:P1,multiply3x3_vect3:b1,multiply3x3_mat3:ga,multiplyMatrix:ep,transpose3x3:Tt,invert3x3:tp,identity3x3:io,
identity:oo,isIdentity:rp,isIdentity3x3:np,determinant3x3:Fr,quaternionToMatrix3x3:fo,areEquals:so,areMatricesEqual:yt,roundNumber:Dr,
roundVector:Nr,matrix3x3ToQuaternion:co,multiplyQuaternion:ap,orthogonalize3x3:uo,diagonalize3x3:go,singularValueDecomposition3x3:sp,
solveLinearSystem:ya,invertMatrix:Vr,luFactorLinearSystem:va,luSolveLinearSystem:Ta,estimateMatrixCondition:ip,jacobi:op,
jacobiN:zt,solveHomogeneousLeastSquares:ha,solveLeastSquares:fp,hex2float:cp,rgb2hsv:up,hsv2rgb:xa,lab2xyz:ho,xyz2lab:lo,
xyz2rgb:po,rgb2xyz:vo,rgb2lab:gp,lab2rgb:hp,uninitializeBounds:Ht,areBoundsInitialized:Wt,computeBoundsFromPoints:lp,clampValue:_r,
clampVector:Br,clampAndNormalizeValue:pp,getScalarTypeFittingRange:vp,getAdjustedScalarRange:Tp,extentIsWithinOtherExtent:yp,
boundsIsWithinOtherBounds:xp,pointIsWithinBounds:Cp,solve3PointCircle:Sp,inf:Mp,negInf:dp,isInf:Ep,isNan:la,isNaN:la,isFinite:Rp,
createUninitializedBounds:Ca,getMajorAxisIndex:wp,getMinorAxisIndex:Op,getSparseOrthogonalMatrix:Lp,floatToHex2:To,floatRGB2HexCode:Dp,
float2CssRGBA:_p};function mp(t,e){e.classHierarchy.push("vtkImplicitFunction"),t.functionValue=r=>{if(!e.transform)return t.evaluateFunction(
r);let n=[];return e.transform.transformPoint(r,n),t.evaluateFunction(n)},t.evaluateFunction=r=>{E.vtkErrorMacro("not im\
plemented")}}var Fp={};function yo(t,e,r={}){Object.assign(e,Fp,r),E.obj(t,e),E.setGet(t,e,["transform"]),mp(t,e)}var Np=E.
newInstance(yo,"vtkImplicitFunction"),xo={newInstance:Np,extend:yo};var Sa=1e-6,Co="coincide",So="disjoint";function Vp(t,e,r){return t[0]*(r[0]-e[0])+t[1]*(r[1]-e[1])+t[2]*(r[2]-e[2])}function Mo(t,e,r){
let n=r[0]*(t[0]-e[0])+r[1]*(t[1]-e[1])+r[2]*(t[2]-e[2]);return Math.abs(n)}function Eo(t,e,r,n){let a=[];b(t,e,a);let s=U(
r,a);n[0]=t[0]-s*r[0],n[1]=t[1]-s*r[1],n[2]=t[2]-s*r[2]}function Ro(t,e,r){let n=U(t,e),a=U(e,e);return a===0&&(a=1),r[0]=
t[0]-n*e[0]/a,r[1]=t[1]-n*e[1]/a,r[2]=t[2]-n*e[2]/a,r}function wo(t,e,r,n){let a=[];b(t,e,a);let s=U(r,a),i=U(r,r);i!==0?
(n[0]=t[0]-s*r[0]/i,n[1]=t[1]-s*r[1]/i,n[2]=t[2]-s*r[2]/i):(n[0]=t[0],n[1]=t[1],n[2]=t[2])}function Oo(t,e,r,n){let a={intersection:!1,
betweenPoints:!1,t:Number.MAX_VALUE,x:[]},s=[],i=[];b(e,t,s),b(r,t,i);let o=U(n,i),f=U(n,s),c,u;return f<0?c=-f:c=f,o<0?
u=-o*Sa:u=o*Sa,c<=u||(a.t=o/f,a.x[0]=t[0]+a.t*s[0],a.x[1]=t[1]+a.t*s[1],a.x[2]=t[2]+a.t*s[2],a.intersection=!0,a.betweenPoints=
a.t>=0&&a.t<=1),a}function Lo(t,e,r,n){let a={intersection:!1,l0:[],l1:[],error:null},s=[];ue(e,n,s);let i=s.map(h=>Math.
abs(h));if(i[0]+i[1]+i[2]<Sa){let h=[];return b(t,r,h),U(e,h)===0?a.error=Co:a.error=So,a}let o;i[0]>i[1]&&i[0]>i[2]?o="\
x":i[1]>i[2]?o="y":o="z";let f=[],c=-U(e,t),u=-U(n,r);switch(o){case"x":f[0]=0,f[1]=(u*e[2]-c*n[2])/s[0],f[2]=(c*n[1]-u*
e[1])/s[0];break;case"y":f[0]=(c*n[2]-u*e[2])/s[1],f[1]=0,f[2]=(u*e[0]-c*n[0])/s[1];break;case"z":f[0]=(u*e[1]-c*n[1])/s[2],
f[1]=(c*n[0]-u*e[0])/s[2],f[2]=0;break}return a.l0=f,ke(f,s,a.l1),a.intersection=!0,a}var Bp={evaluate:Vp,distanceToPlane:Mo,
projectPoint:Eo,projectVector:Ro,generalizedProjectPoint:wo,intersectWithLine:Oo,intersectWithPlane:Lo,DISJOINT:So,COINCIDE:Co};
function Up(t,e){e.classHierarchy.push("vtkPlane"),t.distanceToPlane=r=>Mo(r,e.origin,e.normal),t.projectPoint=(r,n)=>{Eo(
r,e.origin,e.normal,n)},t.projectVector=(r,n)=>Ro(r,e.normal,n),t.push=r=>{if(r!==0)for(let n=0;n<3;n++)e.origin[n]+=r*e.
normal[n]},t.generalizedProjectPoint=(r,n)=>{wo(r,e.origin,e.normal,n)},t.evaluateFunction=(r,n,a)=>Array.isArray(r)?e.normal[0]*
(r[0]-e.origin[0])+e.normal[1]*(r[1]-e.origin[1])+e.normal[2]*(r[2]-e.origin[2]):e.normal[0]*(r-e.origin[0])+e.normal[1]*
(n-e.origin[1])+e.normal[2]*(a-e.origin[2]),t.evaluateGradient=r=>[e.normal[0],e.normal[1],e.normal[2]],t.intersectWithLine=
(r,n)=>Oo(r,n,e.origin,e.normal),t.intersectWithPlane=(r,n)=>Lo(r,n,e.origin,e.normal)}var Gp={normal:[0,0,1],origin:[0,
0,0]};function Do(t,e,r={}){Object.assign(e,Gp,r),xo.extend(t,e,r),E.setGetArray(t,e,["normal","origin"],3),Up(t,e)}var kp=E.
newInstance(Do,"vtkPlane"),Fe={newInstance:kp,extend:Do,...Bp};var Wr=[Number.MAX_VALUE,-Number.MAX_VALUE,Number.MAX_VALUE,-Number.MAX_VALUE,Number.MAX_VALUE,-Number.MAX_VALUE];function _o(t,e){
return t[0]===e[0]&&t[1]===e[1]&&t[2]===e[2]&&t[3]===e[3]&&t[4]===e[4]&&t[5]===e[5]}function ze(t){return t?.length>=6&&
t[0]<=t[1]&&t[2]<=t[3]&&t[4]<=t[5]}function Ma(t,e){return t[0]=e[0],t[1]=e[1],t[2]=e[2],t[3]=e[3],t[4]=e[4],t[5]=e[5],t}
function da(t){return Ma(t,Wr)}function kr(t,e,r,n){let[a,s,i,o,f,c]=t;return typeof e=="number"?(t[0]=a<e?a:e,t[1]=s>e?
s:e,t[2]=i<r?i:r,t[3]=o>r?o:r,t[4]=f<n?f:n,t[5]=c>n?c:n):(t[0]=a<e[0]?a:e[0],t[1]=s>e[0]?s:e[0],t[2]=i<e[1]?i:e[1],t[3]=
o>e[1]?o:e[1],t[4]=f<e[2]?f:e[2],t[5]=c>e[2]?c:e[2]),t}function Ea(t,e){if(e.length===0)return t;if(Array.isArray(e[0]))
for(let r=0;r<e.length;++r)kr(t,...e[r]);else for(let r=0;r<e.length;r+=3)kr(t,...e.slice(r,r+3));return t}function mo(t,e,r,n,a,s,i){
let[o,f,c,u,h,l]=t;return i===void 0?(t[0]=Math.min(e[0],o),t[1]=Math.max(e[1],f),t[2]=Math.min(e[2],c),t[3]=Math.max(e[3],
u),t[4]=Math.min(e[4],h),t[5]=Math.max(e[5],l)):(t[0]=Math.min(e,o),t[1]=Math.max(r,f),t[2]=Math.min(n,c),t[3]=Math.max(
a,u),t[4]=Math.min(s,h),t[5]=Math.max(i,l)),t}function Fo(t,e,r,n){let[a,s,i,o,f,c]=t;return t[0]=e,t[1]=e>s?e:s,t[2]=r,
t[3]=r>o?r:o,t[4]=n,t[5]=n>c?n:c,a!==e||i!==r||f!==n}function No(t,e,r,n){let[a,s,i,o,f,c]=t;return t[0]=e<a?e:a,t[1]=e,
t[2]=r<i?r:i,t[3]=r,t[4]=n<f?n:f,t[5]=n,s!==e||o!==r||c!==n}function Ra(t,e){return e==null?zp(t):(t[0]-=e,t[1]+=e,t[2]-=
e,t[3]+=e,t[4]-=e,t[5]+=e,t)}function zp(t){let e=[0,0,0],r=-1,n=0,a=0;for(let s=0;s<3;++s)a=t[s*2+1]-t[s*2],a>n&&(n=a,r=
s),e[s]=a>0?1:0;if(r<0)return Ra(t,.5);for(let s=0;s<3;++s)if(!e[s]){let i=.005*n;t[s*2]-=i,t[s*2+1]+=i}return t}function wa(t,e,r,n){
return ze(t)?(e>=0?(t[0]*=e,t[1]*=e):(t[0]=e*t[1],t[1]=e*t[0]),r>=0?(t[2]*=r,t[3]*=r):(t[2]=r*t[3],t[3]=r*t[2]),n>=0?(t[4]*=
n,t[5]*=n):(t[4]=n*t[5],t[5]=n*t[4]),!0):!1}function Oa(t){return[.5*(t[0]+t[1]),.5*(t[2]+t[3]),.5*(t[4]+t[5])]}function Hp(t,e,r,n){
if(!ze(t))return!1;let a=Oa(t);return t[0]-=a[0],t[1]-=a[0],t[2]-=a[1],t[3]-=a[1],t[4]-=a[2],t[5]-=a[2],wa(t,e,r,n),t[0]+=
a[0],t[1]+=a[0],t[2]+=a[1],t[3]+=a[1],t[4]+=a[2],t[5]+=a[2],!0}function jt(t,e){return t[e*2+1]-t[e*2]}function Kt(t){return[
jt(t,0),jt(t,1),jt(t,2)]}function Vo(t){return t.slice(0,2)}function Bo(t){return t.slice(2,4)}function Uo(t){return t.slice(
4,6)}function Go(t){let e=Kt(t);return e[0]>e[1]?e[0]>e[2]?e[0]:e[2]:e[1]>e[2]?e[1]:e[2]}function La(t){if(ze(t)){let e=Kt(
t);return e[0]*e[0]+e[1]*e[1]+e[2]*e[2]}return null}function ko(t){let e=La(t);return e!==null?Math.sqrt(e):null}function Ar(t){
return[t[0],t[2],t[4]]}function jr(t){return[t[1],t[3],t[5]]}function Gr(t,e){return t<=0&&e>=0||t>=0&&e<=0}function Da(t,e){
return e[0]=[t[0],t[2],t[4]],e[1]=[t[0],t[2],t[5]],e[2]=[t[0],t[3],t[4]],e[3]=[t[0],t[3],t[5]],e[4]=[t[1],t[2],t[4]],e[5]=
[t[1],t[2],t[5]],e[6]=[t[1],t[3],t[4]],e[7]=[t[1],t[3],t[5]],e}function zo(t,e,r){return e[0]=t[0],e[1]=t[2],e[2]=t[4],r[0]=
t[1],r[1]=t[3],r[2]=t[5],e}function Ho(t,e,r=[]){let n=Da(t,[]);for(let a=0;a<n.length;++a)k.transformMat4(n[a],n[a],e);
return da(r),Ea(r,n)}function Wo(t,e=[]){return e[0]=.5*(t[1]-t[0]),e[1]=.5*(t[3]-t[2]),e[2]=.5*(t[5]-t[4]),e}function Ao(t,e,r,n){
let a=[].concat(Wr),s=t.getData();for(let i=0;i<s.length;i+=3){let o=[s[i],s[i+1],s[i+2]],f=U(o,e);a[0]=Math.min(f,a[0]),
a[1]=Math.max(f,a[1]);let c=U(o,r);a[2]=Math.min(c,a[2]),a[3]=Math.max(c,a[3]);let u=U(o,n);a[4]=Math.min(u,a[4]),a[5]=Math.
max(u,a[5])}return a}function jo(t,e,r,n,a){let s=!0,i=[],o=0,f=[],c=[0,0,0],u=0,h=1,l=2;for(let p=0;p<3;p++)e[p]<t[2*p]?
(i[p]=h,c[p]=t[2*p],s=!1):e[p]>t[2*p+1]?(i[p]=u,c[p]=t[2*p+1],s=!1):i[p]=l;if(s)return n[0]=e[0],n[1]=e[1],n[2]=e[2],a[0]=
0,1;for(let p=0;p<3;p++)i[p]!==l&&r[p]!==0?f[p]=(c[p]-e[p])/r[p]:f[p]=-1;for(let p=0;p<3;p++)f[o]<f[p]&&(o=p);if(f[o]>1||
f[o]<0)return 0;a[0]=f[o];for(let p=0;p<3;p++)if(o!==p){if(n[p]=e[p]+f[o]*r[p],n[p]<t[2*p]||n[p]>t[2*p+1])return 0}else n[p]=
c[p];return 1}function Ko(t,e,r){let n=[],a=0,s=1,i=1;for(let o=4;o<=5;++o){n[2]=t[o];for(let f=2;f<=3;++f){n[1]=t[f];for(let c=0;c<=
1;++c)if(n[0]=t[c],a=Fe.evaluate(r,e,n),i&&(s=a>=0?1:-1,i=0),a===0||s>0&&a<0||s<0&&a>0)return 1}}return 0}function $o(t,e){
if(!(ze(t)&&ze(e)))return!1;let r=[0,0,0,0,0,0],n;for(let a=0;a<3;a++)if(n=!1,e[a*2]>=t[a*2]&&e[a*2]<=t[a*2+1]?(n=!0,r[a*
2]=e[a*2]):t[a*2]>=e[a*2]&&t[a*2]<=e[a*2+1]&&(n=!0,r[a*2]=t[a*2]),e[a*2+1]>=t[a*2]&&e[a*2+1]<=t[a*2+1]?(n=!0,r[a*2+1]=e[2*
a+1]):t[a*2+1]>=e[a*2]&&t[a*2+1]<=e[a*2+1]&&(n=!0,r[a*2+1]=t[a*2+1]),!n)return!1;return t[0]=r[0],t[1]=r[1],t[2]=r[2],t[3]=
r[3],t[4]=r[4],t[5]=r[5],!0}function zr(t,e){if(!(ze(t)&&ze(e)))return!1;for(let r=0;r<3;r++)if(!(e[r*2]>=t[r*2]&&e[r*2]<=
t[r*2+1])&&!(t[r*2]>=e[r*2]&&t[r*2]<=e[r*2+1])&&!(e[r*2+1]>=t[r*2]&&e[r*2+1]<=t[r*2+1])&&!(t[r*2+1]>=e[r*2]&&t[r*2+1]<=e[r*
2+1]))return!1;return!0}function Hr(t,e,r,n){return!(e<t[0]||e>t[1]||r<t[2]||r>t[3]||n<t[4]||n>t[5])}function Wp(t,e){return!(!zr(
t,e)||!Hr(t,...Ar(e))||!Hr(t,...jr(e)))}function Xo(t,e,r){let n=[[0,1,2,3,4,5,6,7],[0,1,4,5,2,3,6,7],[0,2,4,6,1,3,5,7]],
a=[0,0,0,0,0,0,0,0],s=0;for(let h=0;h<2;h++)for(let l=2;l<4;l++)for(let p=4;p<6;p++){let x=[t[h],t[l],t[p]];a[s++]=Fe.evaluate(
r,e,x)}let i=2;for(;i--&&!(Gr(a[n[i][0]],a[n[i][4]])&&Gr(a[n[i][1]],a[n[i][5]])&&Gr(a[n[i][2]],a[n[i][6]])&&Gr(a[n[i][3]],
a[n[i][7]])););if(i<0)return!1;let o=Math.sign(r[i]),f=Math.abs((t[i*2+1]-t[i*2])*r[i]),c=o>0?1:0;for(let h=0;h<4;h++){if(f===
0)continue;let l=Math.abs(a[n[i][h]])/f;o>0&&l<c&&(c=l),o<0&&l>c&&(c=l)}let u=(1-c)*t[i*2]+c*t[i*2+1];return o>0?t[i*2]=
u:t[i*2+1]=u,!0}function Yo(t,e){for(let n=0;n<3;++n)e[n]=e[n]<1?1:e[n];let r=e[0]*e[1]*e[2];for(;r>t;){for(let n=0;n<3;++n)
e[n]=e[n]>1?e[n]-1:1;r=e[0]*e[1]*e[2]}}function qo(t,e,r,n=[]){e=e<=0?1:e;let a=0,s=[0,0,0],i=-1,o=0,f=Kt(t),c=f[0]+f[1]+
f[2],u=c*(.001/3);for(let g=0;g<3;++g)f[g]>o&&(i=g,o=f[g]),f[g]>u?(s[g]=1,a++):s[g]=0;let h=Ar(t),l=jr(t);if(a<1)return r[0]=
1,r[1]=1,r[2]=1,n[0]=h[0]-.5,n[1]=l[0]+.5,n[2]=h[1]-.5,n[3]=l[1]+.5,n[4]=h[2]-.5,n[5]=l[2]+.5,1;let p=e;p/=s[0]?f[0]/c:1,
p/=s[1]?f[1]/c:1,p/=s[2]?f[2]/c:1,p**=1/a;for(let g=0;g<3;++g)r[g]=s[g]?Math.floor(p*f[g]/c):1,r[g]=r[g]<1?1:r[g];Yo(e,r);
let x=.5*f[i]/r[i];for(let g=0;g<3;++g)s[g]?(n[2*g]=h[g],n[2*g+1]=l[g]):(n[2*g]=h[g]-x,n[2*g+1]=l[g]+x);return r[0]*r[1]*
r[2]}function Zo(t,e){if(t[0]>=e[0]&&t[0]<=e[1]&&t[1]>=e[2]&&t[1]<=e[3]&&t[2]>=e[4]&&t[2]<=e[5])return 0;let r=[0,0,0];return t[0]<
e[0]?r[0]=e[0]-t[0]:t[0]>e[1]&&(r[0]=t[0]-e[1]),t[1]<e[2]?r[1]=e[2]-t[1]:t[1]>e[3]&&(r[1]=t[1]-e[3]),t[2]<e[4]?r[2]=e[4]-
t[2]:t[2]>e[5]&&(r[2]=t[2]-e[5]),U(r,r)}var Ap=class{constructor(t){this.bounds=t,this.bounds||(this.bounds=new Float64Array(
Wr))}getBounds(){return this.bounds}equals(t){return _o(this.bounds,t)}isValid(){return ze(this.bounds)}setBounds(t){return Ma(
this.bounds,t)}reset(){return da(this.bounds)}addPoint(...t){return kr(this.bounds,...t)}addPoints(t){return Ea(this.bounds,
t)}addBounds(t,e,r,n,a,s){return mo(this.bounds,t,e,r,n,a,s)}setMinPoint(t,e,r){return Fo(this.bounds,t,e,r)}setMaxPoint(t,e,r){
return No(this.bounds,t,e,r)}inflate(t){return Ra(this.bounds,t)}scale(t,e,r){return wa(this.bounds,t,e,r)}getCenter(){return Oa(
this.bounds)}getLength(t){return jt(this.bounds,t)}getLengths(){return Kt(this.bounds)}getMaxLength(){return Go(this.bounds)}getDiagonalLength(){
return ko(this.bounds)}getDiagonalLength2(){return La(this.bounds)}getMinPoint(){return Ar(this.bounds)}getMaxPoint(){return jr(
this.bounds)}getXRange(){return Vo(this.bounds)}getYRange(){return Bo(this.bounds)}getZRange(){return Uo(this.bounds)}getCorners(t){
return Da(this.bounds,t)}computeCornerPoints(t,e){return zo(this.bounds,t,e)}computeLocalBounds(t,e,r){return Ao(this.bounds,
t,e,r)}transformBounds(t,e=[]){return Ho(this.bounds,t,e)}computeScale3(t){return Wo(this.bounds,t)}cutWithPlane(t,e){return Xo(
this.bounds,t,e)}intersectBox(t,e,r,n){return jo(this.bounds,t,e,r,n)}intersectPlane(t,e){return Ko(this.bounds,t,e)}intersect(t){
return $o(this.bounds,t)}intersects(t){return zr(this.bounds,t)}containsPoint(t,e,r){return Hr(this.bounds,t,e,r)}contains(t){
return zr(this.bounds,t)}computeDivisions(t,e,r=[]){return qo(this.bounds,t,e,r)}distance2ToBounds(t){return Zo(t,this.bounds)}};
function jp(t){return new Ap(t&&t.bounds)}var Kp={equals:_o,isValid:ze,setBounds:Ma,reset:da,addPoint:kr,addPoints:Ea,addBounds:mo,
setMinPoint:Fo,setMaxPoint:No,inflate:Ra,scale:wa,scaleAboutCenter:Hp,getCenter:Oa,getLength:jt,getLengths:Kt,getMaxLength:Go,
getDiagonalLength:ko,getDiagonalLength2:La,getMinPoint:Ar,getMaxPoint:jr,getXRange:Vo,getYRange:Bo,getZRange:Uo,getCorners:Da,
computeCornerPoints:zo,computeLocalBounds:Ao,transformBounds:Ho,computeScale3:Wo,cutWithPlane:Xo,intersectBox:jo,intersectPlane:Ko,
intersect:$o,intersects:zr,containsPoint:Hr,contains:Wp,computeDivisions:qo,clampDivisions:Yo,distance2ToBounds:Zo,INIT_BOUNDS:Wr},
H={newInstance:jp,...Kp};var $p={Int8Array:1,Uint8Array:1,Uint8ClampedArray:1,Int16Array:2,Uint16Array:2,Int32Array:4,Uint32Array:4,Float32Array:4,
Float64Array:8},ee={VOID:"",CHAR:"Int8Array",SIGNED_CHAR:"Int8Array",UNSIGNED_CHAR:"Uint8Array",UNSIGNED_CHAR_CLAMPED:"U\
int8ClampedArray",SHORT:"Int16Array",UNSIGNED_SHORT:"Uint16Array",INT:"Int32Array",UNSIGNED_INT:"Uint32Array",FLOAT:"Flo\
at32Array",DOUBLE:"Float64Array"},Xp=ee.FLOAT,_a={DefaultDataType:Xp,DataTypeByteSize:$p,VtkDataTypes:ee};var{vtkWarningMacro:Yp}=E,{DefaultDataType:qp}=_a;function ma(t,e,r){let n=t.length,a=Number.MAX_VALUE,s=-Number.MAX_VALUE,
i,o;for(o=e;o<n;o+=r)if(!Number.isNaN(t[o])){a=t[o],s=a;break}for(;o<n;o+=r)i=t[o],i<a?a=i:i>s&&(s=i);return{min:a,max:s}}
function Zp(){let t=Number.MAX_VALUE,e=-Number.MAX_VALUE,r=0,n=0;return{add(a){t>a&&(t=a),e<a&&(e=a),r++,n+=a},get(){return{
min:t,max:e,count:r,sum:n,mean:n/r}},getRange(){return{min:t,max:e}}}}function Jo(t,e=0,r=1){if(e<0&&r>1){let n=t.length/
r,a=new Float64Array(n);for(let s=0,i=0;s<n;++s){for(let o=i+r;i<o;++i)a[s]+=t[i]*t[i];a[s]**=.5}return ma(a,0,1)}return ma(
t,e<0?0:e,r)}function Qo(t,e=0){let r=t||[];for(;r.length<=e;)r.push(null);return r}function Fa(t){return Object.prototype.
toString.call(t).slice(8,-1)}function Qp(t){let e=t.getNumberOfComponents(),r=0,n=new Array(e);for(let a=0;a<t.getNumberOfTuples();++a){
t.getTuple(a,n);let s=At.norm(n,e);s>r&&(r=s)}return r}var Jp={computeRange:Jo,createRangeHelper:Zp,fastComputeRange:ma,
getDataType:Fa,getMaxNorm:Qp};function Ip(t,e){e.classHierarchy.push("vtkDataArray");function r(n){let a=t.getNumberOfComponents(),
s=e.values.length/(a>0?a:1);if(n!==s&&n>s){let i=e.values;e.values=E.newTypedArray(e.dataType,(n+s)*a),e.values.set(i)}}
t.dataChange=()=>{e.ranges=null,t.modified()},t.allocate=n=>{!Number.isInteger(n)||n<0||r(t.getNumberOfTuples()+n)},t.resize=
n=>{if(!Number.isInteger(n)||n<0)return!1;r(n);let a=n*t.getNumberOfComponents();return e.size!==a?(e.size=a,t.dataChange(),
!0):!1},t.initialize=()=>(t.resize(0),t),t.getElementComponentSize=()=>e.values.BYTES_PER_ELEMENT,t.getComponent=(n,a=0)=>e.
values[n*e.numberOfComponents+a],t.setComponent=(n,a,s)=>{let i=n*e.numberOfComponents+a;Object.is(s,e.values[i])||(e.values[i]=
s,t.dataChange())},t.getValue=n=>e.values[n],t.setValue=(n,a)=>{Object.is(a,e.values[n])||(e.values[n]=a,t.dataChange())},
t.getData=()=>e.size===e.values.length?e.values:e.values.subarray(0,e.size),t.getRange=(n=-1)=>{let a=n;a<0&&(a=e.numberOfComponents===
1?0:e.numberOfComponents);let s=null;return e.ranges||(e.ranges=Qo(e.ranges,e.numberOfComponents)),s=e.ranges[a],s?(e.rangeTuple[0]=
s.min,e.rangeTuple[1]=s.max,e.rangeTuple):(s=Jo(t.getData(),n,e.numberOfComponents),e.ranges[a]=s,e.rangeTuple[0]=s.min,
e.rangeTuple[1]=s.max,e.rangeTuple)},t.setRange=(n,a)=>{e.ranges||(e.ranges=Qo(e.ranges,e.numberOfComponents));let s={min:n.
min,max:n.max};return e.ranges[a]=s,e.rangeTuple[0]=s.min,e.rangeTuple[1]=s.max,e.rangeTuple},t.getRanges=(n=!0)=>{if(!n)
return structuredClone(e.ranges);let a=[];for(let s=0;s<e.numberOfComponents;s++){let[i,o]=t.getRange(s),f={min:i,max:o};
a.push(f)}if(e.numberOfComponents>1){let[s,i]=t.getRange(-1),o={min:s,max:i};a.push(o)}return a},t.setTuple=(n,a)=>{let s=n*
e.numberOfComponents,i=!1;for(let o=0;o<e.numberOfComponents;o++){let f=s+o,c=e.values[f];e.values[f]=a[o],Object.is(e.values[f],
c)||(i=!0)}return i&&t.dataChange(),i},t.setTuples=(n,a)=>{let s=n*e.numberOfComponents,i=Math.min(a.length,e.size-s),o=!1;
for(let f=0;f<i;){let c=e.values[s];e.values[s]=a[f],Object.is(e.values[s],c)||(o=!0),s++,f++}return o&&t.dataChange(),o},
t.insertTuple=(n,a)=>{if(!Number.isInteger(n)||n<0)throw new RangeError("idx must be a nonnegative integer");let s=e.size<=
n*e.numberOfComponents;s&&(r(n+1),e.size=(n+1)*e.numberOfComponents);let i=t.setTuple(n,a);return s&&!i&&t.dataChange(),
n},t.insertTuples=(n,a)=>{if(!Number.isInteger(n)||n<0)throw new RangeError("idx must be a nonnegative integer");if(a.length%
e.numberOfComponents!==0)throw new RangeError("tuples.length must be a multiple of numberOfComponents");let s=n+a.length/
e.numberOfComponents,i=e.size<s*e.numberOfComponents;i&&(r(s),e.size=s*e.numberOfComponents);let o=t.setTuples(n,a);return i&&
!o&&t.dataChange(),s},t.insertNextTuple=n=>{let a=e.size/e.numberOfComponents;return t.insertTuple(a,n)},t.insertNextTuples=
n=>{let a=e.size/e.numberOfComponents;return t.insertTuples(a,n)},t.findTuple=(n,a=vt)=>{for(let s=0;s<e.size;s+=e.numberOfComponents)
if(Math.abs(n[0]-e.values[s])<=a){let i=!0;for(let o=1;o<e.numberOfComponents;++o)if(Math.abs(n[o]-e.values[s+o])>a){i=!1;
break}if(i)return s/e.numberOfComponents}return-1},t.getTuple=(n,a=[])=>{let s=e.numberOfComponents||1,i=n*s;switch(s){case 4:
a[3]=e.values[i+3];case 3:a[2]=e.values[i+2];case 2:a[1]=e.values[i+1];case 1:a[0]=e.values[i];break;default:for(let o=s-
1;o>=0;--o)a[o]=e.values[i+o]}return a},t.getTuples=(n,a)=>{let s=(n??0)*e.numberOfComponents,i=(a??t.getNumberOfTuples())*
e.numberOfComponents,o=t.getData().subarray(s,i);return o.length>0?o:null},t.getTupleLocation=(n=1)=>n*e.numberOfComponents,
t.getNumberOfComponents=()=>e.numberOfComponents,t.getNumberOfValues=()=>e.size,t.getNumberOfTuples=()=>e.size/e.numberOfComponents,
t.getDataType=()=>e.dataType,t.setNumberOfComponents=n=>!Number.isInteger(n)||n<=0||e.size%n!==0?(Yp("numberOfComponents\
 must be a positive integer that divides the array size"),!1):e.numberOfComponents!==n?(e.numberOfComponents=n,t.dataChange(),
!0):!1,t.newClone=()=>Po({empty:!0,name:e.name,dataType:e.dataType,numberOfComponents:e.numberOfComponents,ranges:structuredClone(
e.ranges)}),t.getName=()=>(e.name||(t.modified(),e.name=`vtkDataArray${t.getMTime()}`),e.name),t.setData=(n,a)=>{if(!ArrayBuffer.
isView(n)||n instanceof DataView)throw new TypeError("Array must be a TypedArray");let s=a??e.numberOfComponents;e.values=
n,e.size=n.length,e.dataType=Fa(n),e.numberOfComponents=1,Number.isInteger(s)&&s>0&&e.size%s===0&&(e.numberOfComponents=
s),t.dataChange()},t.getState=({preserveTypedArrays:n=!1}={})=>{if(e.deleted)return null;let a={...e,vtkClass:t.getClassName()};
n||(a.values=Array.from(a.values)),delete a.buffer,Object.keys(a).forEach(i=>{a[i]||delete a[i]});let s={};return Object.
keys(a).sort().forEach(i=>{s[i]=a[i]}),s.mtime&&delete s.mtime,s},t.deepCopy=n=>{let a=t.getDataType(),s=e.values;t.shallowCopy(
n);let i=structuredClone(n.getRanges(!1));s?.length>=n.getNumberOfValues()&&a===n.getDataType()?(s.set(n.getData()),e.values=
s):e.values=n.getData().slice(),e.ranges=i,e.rangeTuple=[0,0],t.modified()},t.interpolateTuple=(n,a,s,i,o,f)=>{let c=e.numberOfComponents||
1;if(c!==a.getNumberOfComponents()||c!==i.getNumberOfComponents())throw new RangeError("numberOfComponents must match");
let u=a.getTuple(s),h=i.getTuple(o),l=[];switch(l.length=c,c){case 4:l[3]=u[3]+(h[3]-u[3])*f;case 3:l[2]=u[2]+(h[2]-u[2])*
f;case 2:l[1]=u[1]+(h[1]-u[1])*f;case 1:l[0]=u[0]+(h[0]-u[0])*f;break;default:for(let p=0;p<c;p++)l[p]=u[p]+(h[p]-u[p])*
f}return t.insertTuple(n,l)}}var Pp={name:"",numberOfComponents:1,dataType:qp,rangeTuple:[0,0]};function Io(t,e,r={}){if(Object.
assign(e,Pp,r),Array.isArray(r.values)&&r.dataType===void 0&&console.warn("vtkDataArray.newInstance: no dataType provide\
d, converting to Float32Array"),!e.empty&&!e.values&&!e.size)throw new TypeError("Cannot create vtkDataArray object with\
out: size > 0, values");if(e.values?Array.isArray(e.values)&&(e.values=E.newTypedArrayFrom(e.dataType,e.values)):e.values=
E.newTypedArray(e.dataType,e.size),e.values&&(e.size=e.size??e.values.length,e.dataType=Fa(e.values)),E.obj(t,e),E.set(t,
e,["name"]),!Number.isInteger(e.numberOfComponents)||e.numberOfComponents<=0||e.size%e.numberOfComponents!==0)throw new RangeError(
"numberOfComponents must be a positive integer that divides model.size");Ip(t,e)}var Po=E.newInstance(Io,"vtkDataArray"),
Y={newInstance:Po,extend:Io,...Jp,..._a};var{vtkErrorMacro:bo,vtkWarningMacro:bp}=E;function ev(t,e){e.classHierarchy.push("vtkFieldData");let r=t.getState;e.arrays&&
(e.arrays=e.arrays.map(n=>({data:le(n.data)}))),t.initialize=()=>{t.initializeFields(),t.copyAllOn(),t.clearFieldFlags()},
t.initializeFields=()=>{e.arrays=[],e.copyFieldFlags={},t.modified()},t.copyStructure=n=>{t.initializeFields(),e.copyFieldFlags=
n.getCopyFieldFlags().map(a=>a),e.arrays=n.getArrays().map(a=>({data:a}))},t.getNumberOfArrays=()=>e.arrays.length,t.getNumberOfActiveArrays=
()=>e.arrays.length,t.addArray=n=>{let a=n.getName(),{array:s,index:i}=t.getArrayWithIndex(a);return s!=null?(e.arrays[i]=
{data:n},i):(e.arrays=[].concat(e.arrays,{data:n}),e.arrays.length-1)},t.removeAllArrays=()=>{e.arrays=[]},t.removeArray=
n=>{let a=e.arrays.findIndex(s=>s.data.getName()===n);return t.removeArrayByIndex(a)},t.removeArrayByIndex=n=>n!==-1&&n<
e.arrays.length?(e.arrays.splice(n,1),!0):!1,t.getArrays=()=>e.arrays.map(n=>n.data),t.getArray=n=>typeof n=="number"?t.
getArrayByIndex(n):t.getArrayByName(n),t.getArrayByName=n=>e.arrays.reduce((a,s,i)=>s.data.getName()===n?s.data:a,null),
t.getArrayWithIndex=n=>{let a=e.arrays.findIndex(s=>s.data.getName()===n);return{array:a!==-1?e.arrays[a].data:null,index:a}},
t.getArrayByIndex=n=>n>=0&&n<e.arrays.length?e.arrays[n].data:null,t.hasArray=n=>t.getArrayWithIndex(n).index>=0,t.getArrayName=
n=>{let a=e.arrays[n];return a?a.data.getName():""},t.getCopyFieldFlags=()=>e.copyFieldFlags,t.getFlag=n=>e.copyFieldFlags[n],
t.passData=(n,a=-1,s=-1)=>{n.getArrays().forEach(i=>{let o=t.getFlag(i.getName());if(o!==!1&&!(e.doCopyAllOff&&o!==!0)&&
i){let f=t.getArrayByName(i.getName());if(f)if(i.getNumberOfComponents()===f.getNumberOfComponents())if(a>-1&&a<i.getNumberOfTuples()){
let c=s>-1?s:a;f.insertTuple(c,i.getTuple(a))}else f.insertTuples(0,i.getTuples());else bo("Unhandled case in passData");else if(a<
0||a>i.getNumberOfTuples())t.addArray(i),n.getAttributes(i).forEach(c=>{t.setAttribute(i,c)});else{let c=i.getNumberOfComponents(),
u=i.getNumberOfValues(),h=s>-1?s:a;u<=h*c&&(u=(h+1)*c),f=Y.newInstance({name:i.getName(),dataType:i.getDataType(),numberOfComponents:c,
values:E.newTypedArray(i.getDataType(),u),size:0}),f.insertTuple(h,i.getTuple(a)),t.addArray(f),n.getAttributes(i).forEach(
l=>{t.setAttribute(f,l)})}}})},t.interpolateData=(n,a=-1,s=-1,i=-1,o=.5)=>{n.getArrays().forEach(f=>{let c=t.getFlag(f.getName());
if(c!==!1&&!(e.doCopyAllOff&&c!==!0)&&f){let u=t.getArrayByName(f.getName());if(u)if(f.getNumberOfComponents()===u.getNumberOfComponents())
if(a>-1&&a<f.getNumberOfTuples()){let h=i>-1?i:a;u.interpolateTuple(h,f,a,f,s,o),bp("Unexpected case in interpolateData")}else
u.insertNextTuples(f.getTuples());else bo("Unhandled case in interpolateData");else if(a<0||s<0||a>f.getNumberOfTuples())
t.addArray(f),n.getAttributes(f).forEach(h=>{t.setAttribute(f,h)});else{let h=f.getNumberOfComponents(),l=f.getNumberOfValues(),
p=i>-1?i:a;l<=p*h&&(l=(p+1)*h),u=Y.newInstance({name:f.getName(),dataType:f.getDataType(),numberOfComponents:h,values:E.
newTypedArray(f.getDataType(),l),size:0}),u.interpolateTuple(p,f,a,f,s,o),t.addArray(u),n.getAttributes(f).forEach(x=>{t.
setAttribute(u,x)})}}})},t.copyFieldOn=n=>{e.copyFieldFlags[n]=!0},t.copyFieldOff=n=>{e.copyFieldFlags[n]=!1},t.copyAllOn=
()=>{(!e.doCopyAllOn||e.doCopyAllOff)&&(e.doCopyAllOn=!0,e.doCopyAllOff=!1,t.modified())},t.copyAllOff=()=>{(e.doCopyAllOn||
!e.doCopyAllOff)&&(e.doCopyAllOn=!1,e.doCopyAllOff=!0,t.modified())},t.clearFieldFlags=()=>{e.copyFieldFlags={}},t.deepCopy=
n=>{e.arrays=n.getArrays().map(a=>{let s=a.newClone();return s.deepCopy(a),{data:s}})},t.copyFlags=n=>n.getCopyFieldFlags().
map(a=>a),t.reset=()=>e.arrays.forEach(n=>n.data.reset()),t.getMTime=()=>e.arrays.reduce((n,a)=>a.data.getMTime()>n?a.data.
getMTime():n,e.mtime),t.getNumberOfComponents=()=>e.arrays.reduce((n,a)=>n+a.data.getNumberOfComponents(),0),t.getNumberOfTuples=
()=>e.arrays.length>0?e.arrays[0].getNumberOfTuples():0,t.getState=n=>{let a=r(n);return a&&(a.arrays=e.arrays.map(s=>({
data:s.data.getState(n)}))),a}}var tv={arrays:[],copyFieldFlags:[],doCopyAllOn:!0,doCopyAllOff:!1};function ef(t,e,r={}){
Object.assign(e,tv,r),E.obj(t,e),ev(t,e)}var rv=E.newInstance(ef,"vtkFieldData"),tf={newInstance:rv,extend:ef};var nv={SCALARS:0,VECTORS:1,NORMALS:2,TCOORDS:3,TENSORS:4,GLOBALIDS:5,PEDIGREEIDS:6,EDGEFLAG:7,NUM_ATTRIBUTES:8},av={MAX:0,
EXACT:1,NOLIMIT:2},sv={DUPLICATECELL:1,HIGHCONNECTIVITYCELL:2,LOWCONNECTIVITYCELL:4,REFINEDCELL:8,EXTERIORCELL:16,HIDDENCELL:32},
iv={DUPLICATEPOINT:1,HIDDENPOINT:2},ov={COPYTUPLE:0,INTERPOLATE:1,PASSDATA:2,ALLCOPY:3},fv="vtkGhostType",cv={DEFAULT:0,
SINGLE:1,DOUBLE:2},Na={AttributeCopyOperations:ov,AttributeLimitTypes:av,AttributeTypes:nv,CellGhostTypes:sv,DesiredOutputPrecision:cv,
PointGhostTypes:iv,ghostArrayName:fv};var{AttributeTypes:qe,AttributeCopyOperations:at}=Na,{vtkWarningMacro:Kr}=E;function uv(t,e){let r=["Scalars","Vectors",
"Normals","TCoords","Tensors","GlobalIds","PedigreeIds"];function n(i){let o=r.find(f=>qe[f.toUpperCase()]===i||typeof i!=
"number"&&f.toLowerCase()===i.toLowerCase());return typeof o>"u"&&(o=null),o}e.classHierarchy.push("vtkDataSetAttributes");
let a={...t};t.checkNumberOfComponents=i=>!0,t.setAttribute=(i,o)=>{let f=n(o);if(i&&f.toUpperCase()==="PEDIGREEIDS"&&!i.
isA("vtkDataArray"))return Kr(`Cannot set attribute ${f}. The attribute must be a vtkDataArray.`),-1;if(i&&!t.checkNumberOfComponents(
i,f))return Kr(`Cannot set attribute ${f}. Incorrect number of components.`),-1;if(i){let c=t.addArray(i);e[`active${f}`]=
c}else e[`active${f}`]=-1;return t.modified(),e[`active${f}`]},t.getAttributes=i=>r.filter(o=>t[`get${o}`]()===i),t.setActiveAttributeByName=
(i,o)=>t.setActiveAttributeByIndex(t.getArrayWithIndex(i).index,o),t.setActiveAttributeByIndex=(i,o)=>{let f=n(o);if(i>=
0&&i<e.arrays.length){if(f.toUpperCase()!=="PEDIGREEIDS"){let c=t.getArrayByIndex(i);if(!c.isA("vtkDataArray"))return Kr(
`Cannot set attribute ${f}. Only vtkDataArray subclasses can be set as active attributes.`),-1;if(!t.checkNumberOfComponents(
c,f))return Kr(`Cannot set attribute ${f}. Incorrect number of components.`),-1}return e[`active${f}`]=i,t.modified(),i}
return i===-1&&(e[`active${f}`]=i,t.modified()),-1},t.getActiveAttribute=i=>t[`get${n(i)}`](),t.removeAllArrays=()=>{r.forEach(
i=>{e[`active${i}`]=-1}),a.removeAllArrays()},t.removeArrayByIndex=i=>(i!==-1&&r.forEach(o=>{i===e[`active${o}`]?e[`acti\
ve${o}`]=-1:i<e[`active${o}`]&&(e[`active${o}`]-=1)}),a.removeArrayByIndex(i)),r.forEach(i=>{let o=`active${i}`;t[`get${i}`]=
()=>t.getArrayByIndex(e[o]),t[`set${i}`]=f=>t.setAttribute(f,i),t[`setActive${i}`]=f=>t.setActiveAttributeByIndex(t.getArrayWithIndex(
f).index,i),t[`copy${i}Off`]=()=>{let f=i.toUpperCase();e.copyAttributeFlags[at.PASSDATA][qe[f]]=!1},t[`copy${i}On`]=()=>{
let f=i.toUpperCase();e.copyAttributeFlags[at.PASSDATA][qe[f]]=!0}}),t.initializeAttributeCopyFlags=()=>{e.copyAttributeFlags=
[],Object.keys(at).filter(i=>i!=="ALLCOPY").forEach(i=>{e.copyAttributeFlags[at[i]]=Object.keys(qe).filter(o=>o!=="NUM_A\
TTRIBUTES").reduce((o,f)=>(o[qe[f]]=!0,o),[])}),e.copyAttributeFlags[at.COPYTUPLE][qe.GLOBALIDS]=!1,e.copyAttributeFlags[at.
INTERPOLATE][qe.GLOBALIDS]=!1,e.copyAttributeFlags[at.COPYTUPLE][qe.PEDIGREEIDS]=!1},t.initialize=E.chain(t.initialize,t.
initializeAttributeCopyFlags),e.dataArrays&&Object.keys(e.dataArrays).length&&Object.keys(e.dataArrays).forEach(i=>{!e.dataArrays[i].
ref&&e.dataArrays[i].type==="vtkDataArray"&&t.addArray(Y.newInstance(e.dataArrays[i]))});let s=t.shallowCopy;t.shallowCopy=
(i,o)=>{s(i,o),e.arrays=i.getArrays().map(f=>{let c=f.newClone();return c.shallowCopy(f,o),{data:c}})},t.initializeAttributeCopyFlags()}
var gv={activeScalars:-1,activeVectors:-1,activeTensors:-1,activeNormals:-1,activeTCoords:-1,activeGlobalIds:-1,activePedigreeIds:-1};
function rf(t,e,r={}){Object.assign(e,gv,r),tf.extend(t,e,r),E.setGet(t,e,["activeScalars","activeNormals","activeTCoord\
s","activeVectors","activeTensors","activeGlobalIds","activePedigreeIds"]),e.arrays||(e.arrays={}),uv(t,e)}var hv=E.newInstance(
rf,"vtkDataSetAttributes"),Va={newInstance:hv,extend:rf,...Na};var lv={UNIFORM:0,DATA_OBJECT_FIELD:0,COORDINATE:1,POINT_DATA:1,POINT:2,POINT_FIELD_DATA:2,CELL:3,CELL_FIELD_DATA:3,VERTEX:4,
VERTEX_FIELD_DATA:4,EDGE:5,EDGE_FIELD_DATA:5,ROW:6,ROW_DATA:6},pv={FIELD_ASSOCIATION_POINTS:0,FIELD_ASSOCIATION_CELLS:1,
FIELD_ASSOCIATION_NONE:2,FIELD_ASSOCIATION_POINTS_THEN_CELLS:3,FIELD_ASSOCIATION_VERTICES:4,FIELD_ASSOCIATION_EDGES:5,FIELD_ASSOCIATION_ROWS:6,
NUMBER_OF_ASSOCIATIONS:7},nf={FieldDataTypes:lv,FieldAssociations:pv};var $t=["pointData","cellData","fieldData"];function vv(t,e){e.classHierarchy.push("vtkDataSet"),$t.forEach(a=>{e[a]?e[a]=
le(e[a]):e[a]=Va.newInstance()}),t.computeBounds=()=>{if(e.modifiedTime&&e.computeTime&&e.modifiedTime>e.computeTime||!e.
computeTime){let a=t.getPoints();a?.getNumberOfPoints()?H.setBounds(e.bounds,a.getBoundsByReference()):e.bounds=At.createUninitializedBounds(),
e.computeTime=E.getCurrentGlobalMTime()}},t.getLength2=()=>{let a=t.getBoundsByReference();return!a||a.length!==6?0:H.getDiagonalLength2(
a)},t.getLength=()=>Math.sqrt(t.getLength2()),t.getCenter=()=>{let a=t.getBoundsByReference();return!a||a.length!==6?[0,
0,0]:H.getCenter(a)},t.getCellBounds=a=>{let s=t.getCell(a);return s?s.getBounds():At.createUninitializedBounds()},t.getBounds=
E.chain(()=>t.computeBounds,t.getBounds),t.getBoundsByReference=E.chain(()=>t.computeBounds,t.getBoundsByReference);let r=t.
shallowCopy;t.shallowCopy=(a,s=!1)=>{r(a,s),$t.forEach(i=>{e[i]=Va.newInstance(),e[i].shallowCopy(a.getReferenceByName(i))})};
let n=t.getMTime;t.getMTime=()=>$t.reduce((a,s)=>Math.max(a,e[s]?.getMTime()??a),n()),t.initialize=()=>($t.forEach(a=>e[a]?.
initialize()),t)}var Tv={};function af(t,e,r={}){Object.assign(e,Tv,r),E.obj(t,e),E.setGet(t,e,$t),E.getArray(t,e,["boun\
ds"],6),vv(t,e)}var yv=E.newInstance(af,"vtkDataSet"),_e={newInstance:yv,extend:af,...nf};var xv={DISPLAY:0,WORLD:1},Ba={CoordinateSystem:xv};var{CoordinateSystem:Ua}=Ba;function sf(t){return()=>E.vtkErrorMacro(`vtkProp::${t} - NOT IMPLEMENTED`)}function Cv(t,e){
e.classHierarchy.push("vtkProp"),t.getMTime=()=>{let r=e.mtime;for(let n=0;n<e.textures.length;++n){let a=e.textures[n].
getMTime();a>r&&(r=a)}return r},t.processSelectorPixelBuffers=(r,n)=>{},t.getNestedProps=()=>null,t.getActors=()=>[],t.getActors2D=
()=>[],t.getVolumes=()=>[],t.pick=sf("pick"),t.hasKey=sf("hasKey"),t.getNestedVisibility=()=>e.visibility&&(!e._parentProp||
e._parentProp.getNestedVisibility()),t.getNestedPickable=()=>e.pickable&&(!e._parentProp||e._parentProp.getNestedPickable()),
t.getNestedDragable=()=>e.dragable&&(!e._parentProp||e._parentProp.getNestedDragable()),t.getRedrawMTime=()=>e.mtime,t.setEstimatedRenderTime=
r=>{e.estimatedRenderTime=r,e.savedEstimatedRenderTime=r},t.restoreEstimatedRenderTime=()=>{e.estimatedRenderTime=e.savedEstimatedRenderTime},
t.addEstimatedRenderTime=r=>{e.estimatedRenderTime+=r},t.setAllocatedRenderTime=r=>{e.allocatedRenderTime=r,e.savedEstimatedRenderTime=
e.estimatedRenderTime,e.estimatedRenderTime=0},t.getSupportsSelection=()=>!1,t.getTextures=()=>e.textures,t.hasTexture=r=>e.
textures.indexOf(r)!==-1,t.addTexture=r=>{r&&!t.hasTexture(r)&&(e.textures=e.textures.concat(r),t.modified())},t.removeTexture=
r=>{let n=e.textures.filter(a=>a!==r);e.textures.length!==n.length&&(e.textures=n,t.modified())},t.removeAllTextures=()=>{
e.textures=[],t.modified()},t.setCoordinateSystemToWorld=()=>t.setCoordinateSystem(Ua.WORLD),t.setCoordinateSystemToDisplay=
()=>t.setCoordinateSystem(Ua.DISPLAY)}var Sv={allocatedRenderTime:10,coordinateSystem:Ua.WORLD,dragable:!0,estimatedRenderTime:0,
paths:null,pickable:!0,renderTimeMultiplier:1,savedEstimatedRenderTime:0,textures:[],useBounds:!0,visibility:!0};function of(t,e,r={}){
Object.assign(e,Sv,r),E.obj(t,e),E.get(t,e,["estimatedRenderTime","allocatedRenderTime"]),E.setGet(t,e,["_parentProp","c\
oordinateSystem","dragable","pickable","renderTimeMultiplier","useBounds","visibility"]),E.moveToProtected(t,e,["parentP\
rop"]),Cv(t,e)}var Mv=E.newInstance(of,"vtkProp"),$r={newInstance:Mv,extend:of,...Ba};var ff={FLAT:0,GOURAUD:1,PHONG:2,PBR:3},Ze={POINTS:0,WIREFRAME:1,SURFACE:2},dv=ff,Ga={Shading:ff,Representation:Ze,Interpolation:dv};var{Representation:Xt,Interpolation:xt}=Ga;function cf(t){return()=>E.vtkErrorMacro(`vtkProperty::${t} - NOT IMPLEMENTED`)}
function Ev(t,e){e.classHierarchy.push("vtkProperty"),t.setColor=(r,n,a)=>{Array.isArray(r)?(e.color[0]!==r[0]||e.color[1]!==
r[1]||e.color[2]!==r[2])&&(e.color[0]=r[0],e.color[1]=r[1],e.color[2]=r[2],t.modified()):(e.color[0]!==r||e.color[1]!==n||
e.color[2]!==a)&&(e.color[0]=r,e.color[1]=n,e.color[2]=a,t.modified()),t.setDiffuseColor(e.color),t.setAmbientColor(e.color),
t.setSpecularColor(e.color)},t.computeCompositeColor=cf("ComputeCompositeColor"),t.getColor=()=>{let r=0;e.ambient+e.diffuse+
e.specular>0&&(r=1/(e.ambient+e.diffuse+e.specular));for(let n=0;n<3;n++)e.color[n]=r*(e.ambient*e.ambientColor[n]+e.diffuse*
e.diffuseColor[n]+e.specular*e.specularColor[n]);return[].concat(e.color)},t.addShaderVariable=cf("AddShaderVariable"),t.
setInterpolationToFlat=()=>t.setInterpolation(xt.FLAT),t.setInterpolationToGouraud=()=>t.setInterpolation(xt.GOURAUD),t.
setInterpolationToPhong=()=>t.setInterpolation(xt.PHONG),t.setInterpolationToPBR=()=>t.setInterpolation(xt.PBR),t.getInterpolationAsString=
()=>E.enumToString(xt,e.interpolation),t.setRepresentationToWireframe=()=>t.setRepresentation(Xt.WIREFRAME),t.setRepresentationToSurface=
()=>t.setRepresentation(Xt.SURFACE),t.setRepresentationToPoints=()=>t.setRepresentation(Xt.POINTS),t.getRepresentationAsString=
()=>E.enumToString(Xt,e.representation)}var Rv={color:[1,1,1],ambientColor:[1,1,1],diffuseColor:[1,1,1],specularColor:[1,
1,1],edgeColor:[0,0,0],ambient:0,diffuse:1,metallic:0,roughness:.6,normalStrength:1,emission:1,baseIOR:1.45,specular:0,specularPower:1,
opacity:1,edgeOpacity:1,interpolation:xt.GOURAUD,representation:Xt.SURFACE,edgeVisibility:!1,backfaceCulling:!1,frontfaceCulling:!1,
pointSize:1,lineWidth:1,lighting:!0,anisotropy:0,anisotropyRotation:0,coatStrength:0,coatRoughness:0,coatColor:[1,1,1],coatF0:.04,
coatNormalStrength:1,displacementFactor:1,emissiveStrength:1,occlusionStrength:1,transmissionFactor:0,alphaCutoff:0,alphaMode:0,
thicknessFactor:0,attenuationDistance:1/0,attenuationColor:[1,1,1],iridescenceFactor:0,iridescenceIOR:1.3,iridescenceThicknessMinimum:100,
iridescenceThicknessMaximum:400,sheenColorFactor:[0,0,0],sheenRoughnessFactor:0,diffuseTransmissionFactor:0,diffuseTransmissionColorFactor:[
1,1,1],dispersion:0,specularFactor:1,specularColorFactor:[1,1,1],textureTransforms:{},shading:!1,materialName:null,ORMTexture:null,
RMTexture:null,anisotropyTexture:null,coatTexture:null,coatRoughnessTexture:null,coatNormalTexture:null,displacementTexture:null,
transmissionTexture:null,thicknessTexture:null,iridescenceTexture:null,iridescenceThicknessTexture:null,sheenColorTexture:null,
sheenRoughnessTexture:null,diffuseTransmissionTexture:null,diffuseTransmissionColorTexture:null,specularTexture:null,specularColorTexture:null};
function uf(t,e,r={}){Object.assign(e,Rv,r),E.obj(t,e),E.setGet(t,e,["lighting","interpolation","ambient","diffuse","met\
allic","roughness","normalStrength","emission","baseIOR","specular","specularPower","opacity","edgeOpacity","edgeVisibil\
ity","lineWidth","pointSize","backfaceCulling","frontfaceCulling","representation","diffuseTexture","metallicTexture","r\
oughnessTexture","normalTexture","ambientOcclusionTexture","emissionTexture","anisotropy","anisotropyRotation","coatStre\
ngth","coatRoughness","coatF0","coatNormalStrength","displacementFactor","emissiveStrength","occlusionStrength","transmi\
ssionFactor","alphaCutoff","alphaMode","thicknessFactor","attenuationDistance","iridescenceFactor","iridescenceIOR","iri\
descenceThicknessMinimum","iridescenceThicknessMaximum","sheenRoughnessFactor","diffuseTransmissionFactor","dispersion",
"ORMTexture","RMTexture","anisotropyTexture","coatTexture","coatRoughnessTexture","coatNormalTexture","displacementTextu\
re","transmissionTexture","thicknessTexture","iridescenceTexture","iridescenceThicknessTexture","sheenColorTexture","she\
enRoughnessTexture","diffuseTransmissionTexture","diffuseTransmissionColorTexture","specularFactor","specularTexture","s\
pecularColorTexture"]),E.setGetArray(t,e,["ambientColor","specularColor","diffuseColor","edgeColor","coatColor","attenua\
tionColor","sheenColorFactor","diffuseTransmissionColorFactor","specularColorFactor"],3),t.setTextureTransform=(n,a)=>{e.
textureTransforms||(e.textureTransforms={}),e.textureTransforms[n]={...a},t.modified()},t.setTextureTransforms=n=>{e.textureTransforms=
n||{},t.modified()},t.getTextureTransform=n=>e.textureTransforms?.[n]||null,t.getTextureTransforms=()=>e.textureTransforms||
{},Ev(t,e)}var wv=E.newInstance(uf,"vtkProperty"),Ct={newInstance:wv,extend:uf,...Ga};var Ne={Off:0,PolygonOffset:1},ka=Ne.PolygonOffset,Xr=Ne.Off,Ov=["VTK_RESOLVE_OFF","VTK_RESOLVE_POLYGON_OFFSET"];function Lv(){
return ka}function Dv(t){let e=ka===t;return ka=t,e}function _v(){return Xr}function Yr(t=0){let e=Xr===t;return Xr=t,e}
function mv(){return Yr(Ne.Off)}function Fv(){return Yr(Ne.Off)}function Nv(){return Yr(Ne.PolygonOffset)}function Vv(){
return Ov[Xr]}var qr={Resolve:Ne,getResolveCoincidentTopologyAsString:Vv,getResolveCoincidentTopologyPolygonOffsetFaces:Lv,
getResolveCoincidentTopology:_v,setResolveCoincidentTopology:Yr,setResolveCoincidentTopologyPolygonOffsetFaces:Dv,setResolveCoincidentTopologyToDefault:mv,
setResolveCoincidentTopologyToOff:Fv,setResolveCoincidentTopologyToPolygonOffset:Nv};function gf(t,e,r){r.forEach(n=>{t[`get${n.method}`]=()=>e[n.key],t[`set${n.method}`]=E.objectSetterMap.object(t,e,{name:n.
key,params:["factor","offset"]})})}var za=["Polygon","Line","Point"],Bv={Polygon:{factor:2,offset:0},Line:{factor:1,offset:-1},
Point:{factor:0,offset:-2}},Uv=()=>{},st={modified:Uv};gf(st,Bv,za.map(t=>({key:t,method:`ResolveCoincidentTopology${t}O\
ffsetParameters`})));function Gv(t,e){e.resolveCoincidentTopology===void 0&&(e.resolveCoincidentTopology=!1),E.setGet(t,
e,["resolveCoincidentTopology"]),e.topologyOffset={Polygon:{factor:0,offset:0},Line:{factor:0,offset:0},Point:{factor:0,
offset:0}},Object.keys(qr).forEach(r=>{t[r]=qr[r]}),Object.keys(st).filter(r=>r!=="modified").forEach(r=>{t[r]=st[r]}),gf(
t,e.topologyOffset,za.map(r=>({key:r,method:`RelativeCoincidentTopology${r}OffsetParameters`}))),t.getCoincidentTopologyPolygonOffsetParameters=
()=>{let r=st.getResolveCoincidentTopologyPolygonOffsetParameters(),n=t.getRelativeCoincidentTopologyPolygonOffsetParameters();
return{factor:r.factor+n.factor,offset:r.offset+n.offset}},t.getCoincidentTopologyLineOffsetParameters=()=>{let r=st.getResolveCoincidentTopologyLineOffsetParameters(),
n=t.getRelativeCoincidentTopologyLineOffsetParameters();return{factor:r.factor+n.factor,offset:r.offset+n.offset}},t.getCoincidentTopologyPointOffsetParameter=
()=>{let r=st.getResolveCoincidentTopologyPointOffsetParameters(),n=t.getRelativeCoincidentTopologyPointOffsetParameters();
return{factor:r.factor+n.factor,offset:r.offset+n.offset}}}var Ha={implementCoincidentTopologyMethods:Gv,staticOffsetAPI:st,
otherStaticMethods:qr,CATEGORIES:za,Resolve:Ne};var he={MIN_KNOWN_PASS:0,ACTOR_PASS:0,COMPOSITE_INDEX_PASS:1,ID_LOW24:2,ID_HIGH24:3,MAX_KNOWN_PASS:3},Wa={PassTypes:he};var kv={DEFAULT:0,MAP_SCALARS:1,DIRECT_SCALARS:2},zv={DEFAULT:0,USE_POINT_DATA:1,USE_CELL_DATA:2,USE_POINT_FIELD_DATA:3,
USE_CELL_FIELD_DATA:4,USE_FIELD_DATA:5},Hv={BY_ID:0,BY_NAME:1},Wv={NONE:0,BASE_COLOR:1,ALPHA:2,NORMAL:3,GEOMETRY_NORMAL:4,
TEXTURE_COORDINATES_0:5,OCCLUSION:6,EMISSIVE:7,METALLIC:10,ROUGHNESS:11,CLEARCOAT_FACTOR:20,CLEARCOAT_ROUGHNESS:21,CLEARCOAT_NORMAL:22,
SHEEN_COLOR:30,SHEEN_ROUGHNESS:31,SPECULAR_FACTOR:40,SPECULAR_COLOR:41,TRANSMISSION_FACTOR:50,VOLUME_THICKNESS:51,IRIDESCENCE_FACTOR:60,
IRIDESCENCE_THICKNESS:61,ANISOTROPIC_STRENGTH:70,ANISOTROPIC_DIRECTION:71,DIFFUSE_TRANSMISSION_FACTOR:80,DIFFUSE_TRANSMISSION_COLOR:81,
F0:90},St={ColorMode:kv,GetArray:Hv,ScalarMode:zv,DebugChannel:Wv};var{vtkErrorMacro:hf}=E,Zr=new Float64Array(16),Qr=new Float64Array(4);function lf(t,e){let r=t.getNormalByReference(),n=t.
getOriginByReference();return e[0]=r[0],e[1]=r[1],e[2]=r[2],e[3]=-(r[0]*n[0]+r[1]*n[1]+r[2]*n[2]),e}function Av(t,e){e.classHierarchy.
push("vtkAbstractMapper"),t.update=()=>{t.getInputData()},t.addClippingPlane=r=>r.isA("vtkPlane")?e.clippingPlanes.includes(
r)?!1:(e.clippingPlanes.push(r),t.modified(),!0):!1,t.getNumberOfClippingPlanes=()=>e.clippingPlanes.length,t.removeAllClippingPlanes=
()=>e.clippingPlanes.length===0?!1:(e.clippingPlanes.length=0,t.modified(),!0),t.removeClippingPlane=r=>{let n=e.clippingPlanes.
indexOf(r);return n===-1?!1:(e.clippingPlanes.splice(n,1),t.modified(),!0)},t.getClippingPlanes=()=>e.clippingPlanes,t.getClippingPlanesMTime=
()=>{let r=0;for(let n=0;n<e.clippingPlanes.length;n++)r=Math.max(r,e.clippingPlanes[n].getMTime());return r},t.setClippingPlanes=
r=>{if(r)if(!Array.isArray(r))t.addClippingPlane(r);else{let n=r.length;for(let a=0;a<n&&a<6;a++)t.addClippingPlane(r[a])}},
t.getClippingPlaneInCoords=(r,n,a)=>{if(n<0||n>=e.clippingPlanes?.length){hf(`Clipping plane index ${n} is out of range.`);
return}let s=a||new Float64Array(4);return lf(e.clippingPlanes[n],Qr),_.invert(Zr,r),_.transpose(Zr,Zr),De.transformMat4(
s,Qr,Zr),s},t.getClippingPlaneInDataCoords=(r,n,a)=>{let s=e.clippingPlanes;if(s){let i=s.length;if(n>=0&&n<i){lf(s[n],Qr),
De.transformMat4(a,Qr,r);return}}hf(`Clipping plane index ${n} is out of range.`)}}var jv={clippingPlanes:[]};function Kv(t,e,r={}){
Object.assign(e,jv,r),E.obj(t,e),E.algo(t,e,1,0),e.clippingPlanes||(e.clippingPlanes=[]),Av(t,e)}var pf={extend:Kv};function $v(t,e){t.computeBounds=()=>{E.vtkErrorMacro("vtkAbstractMapper3D.computeBounds - NOT IMPLEMENTED")};let r=t.getBounds;
t.getBounds=()=>(t.computeBounds(),r());let n=t.getBoundsByReference;t.getBoundsByReference=()=>(t.computeBounds(),n()),
t.getCenter=()=>{let a=t.getBoundsByReference();return e.center=H.isValid(a)?H.getCenter(a):null,e.center?.slice()},t.getLength=
()=>{let a=t.getBoundsByReference();return H.getDiagonalLength(a)}}var Xv=t=>({bounds:[...H.INIT_BOUNDS],center:[0,0,0],
viewSpecificProperties:{},...t});function Yv(t,e,r={}){Object.assign(e,Xv(r)),pf.extend(t,e,r),E.setGet(t,e,["viewSpecif\
icProperties"]),E.getArray(t,e,["bounds"],6),$v(t,e)}var vf={extend:Yv};var de={UNCHANGED:0,SINGLE_POINT:1,X_LINE:2,Y_LINE:3,Z_LINE:4,XY_PLANE:5,YZ_PLANE:6,XZ_PLANE:7,XYZ_GRID:8,EMPTY:9},Aa={StructuredType:de};var{StructuredType:He}=Aa;function qv(t){let e=0;for(let r=0;r<3;++r)t[r*2]<t[r*2+1]&&e++;return t[0]>t[1]||t[2]>t[3]||t[4]>
t[5]?He.EMPTY:e===3?He.XYZ_GRID:e===2?t[0]===t[1]?He.YZ_PLANE:t[2]===t[3]?He.XZ_PLANE:He.XY_PLANE:e===1?t[0]<t[1]?He.X_LINE:
t[2]<t[3]?He.Y_LINE:He.Z_LINE:He.SINGLE_POINT}var Tf={getDataDescriptionFromExtent:qv,...Aa};var{vtkErrorMacro:it}=E;function Zv(t,e){e.classHierarchy.push("vtkImageData"),t.setExtent=(...n)=>{if(e.deleted)return it(
"instance deleted - cannot call any method"),!1;let a=n.length===1?n[0]:n;if(a.length!==6)return!1;let s=e.extent.some((i,o)=>i!==
a[o]);return s&&(e.extent=a.slice(),e.dataDescription=Tf.getDataDescriptionFromExtent(e.extent),t.modified()),s},t.setDimensions=
(...n)=>{let a,s,i;if(e.deleted){it("instance deleted - cannot call any method");return}if(n.length===1){let o=n[0];a=o[0],
s=o[1],i=o[2]}else if(n.length===3)a=n[0],s=n[1],i=n[2];else{it("Bad dimension specification");return}t.setExtent(0,a-1,
0,s-1,0,i-1)},t.getDimensions=()=>[e.extent[1]-e.extent[0]+1,e.extent[3]-e.extent[2]+1,e.extent[5]-e.extent[4]+1],t.getNumberOfCells=
()=>{let n=t.getDimensions(),a=1;for(let s=0;s<3;s++){if(n[s]===0)return 0;n[s]>1&&(a*=n[s]-1)}return a},t.getNumberOfPoints=
()=>{let n=t.getDimensions();return n[0]*n[1]*n[2]},t.getPoint=n=>{let a=t.getDimensions();if(a[0]===0||a[1]===0||a[2]===
0)return it("Requesting a point from an empty image."),null;let s=new Float64Array(3);switch(e.dataDescription){case de.
EMPTY:return null;case de.SINGLE_POINT:break;case de.X_LINE:s[0]=n;break;case de.Y_LINE:s[1]=n;break;case de.Z_LINE:s[2]=
n;break;case de.XY_PLANE:s[0]=n%a[0],s[1]=n/a[0];break;case de.YZ_PLANE:s[1]=n%a[1],s[2]=n/a[1];break;case de.XZ_PLANE:s[0]=
n%a[0],s[2]=n/a[0];break;case de.XYZ_GRID:s[0]=n%a[0],s[1]=n/a[0]%a[1],s[2]=n/(a[0]*a[1]);break;default:it("Invalid data\
Description");break}let i=[0,0,0];return t.indexToWorld(s,i),i},t.getBounds=()=>t.extentToBounds(t.getSpatialExtent()),t.
extentToBounds=n=>H.transformBounds(n,e.indexToWorld),t.getSpatialExtent=()=>H.inflate([...e.extent],.5),t.computeTransforms=
()=>{_.fromTranslation(e.indexToWorld,e.origin),e.indexToWorld[0]=e.direction[0],e.indexToWorld[1]=e.direction[1],e.indexToWorld[2]=
e.direction[2],e.indexToWorld[4]=e.direction[3],e.indexToWorld[5]=e.direction[4],e.indexToWorld[6]=e.direction[5],e.indexToWorld[8]=
e.direction[6],e.indexToWorld[9]=e.direction[7],e.indexToWorld[10]=e.direction[8],_.scale(e.indexToWorld,e.indexToWorld,
e.spacing),_.invert(e.worldToIndex,e.indexToWorld)},t.indexToWorld=(n,a=[])=>(k.transformMat4(a,n,e.indexToWorld),a),t.indexToWorldVec3=
t.indexToWorld,t.worldToIndex=(n,a=[])=>(k.transformMat4(a,n,e.worldToIndex),a),t.worldToIndexVec3=t.worldToIndex,t.indexToWorldBounds=
(n,a=[])=>H.transformBounds(n,e.indexToWorld,a),t.worldToIndexBounds=(n,a=[])=>H.transformBounds(n,e.worldToIndex,a),e._onOriginChanged=
t.computeTransforms,e._onDirectionChanged=t.computeTransforms,e._onSpacingChanged=t.computeTransforms,t.computeTransforms(),
t.getCenter=()=>H.getCenter(t.getBounds()),t.computeHistogram=(n,a=null)=>{let s=[0,0,0,0,0,0];t.worldToIndexBounds(n,s);
let i=[0,0,0],o=[0,0,0];H.computeCornerPoints(s,i,o),Nr(i,i),Nr(o,o);let f=t.getDimensions();Br(i,[0,0,0],[f[0]-1,f[1]-1,
f[2]-1],i),Br(o,[0,0,0],[f[0]-1,f[1]-1,f[2]-1],o);let c=f[0],u=f[0]*f[1],h=t.getPointData().getScalars().getData(),l=-1/0,
p=1/0,x=0,g=0,y=0;for(let v=i[2];v<=o[2];v++)for(let T=i[1];T<=o[1];T++){let S=i[0]+T*c+v*u;for(let d=i[0];d<=o[0];d++){
if(!a||a([d,T,v],s)){let R=h[S];R>l&&(l=R),R<p&&(p=R),x+=R*R,g+=R,y+=1}++S}}let C=y>0?g/y:0,M=y?Math.abs(x/y-C*C):0;return{
minimum:p,maximum:l,average:C,variance:M,sigma:Math.sqrt(M),count:y}},t.computeIncrements=(n,a=1)=>{let s=[],i=a;for(let o=0;o<
3;++o)s[o]=i,i*=n[o*2+1]-n[o*2]+1;return s},t.computeOffsetIndex=([n,a,s])=>{let i=t.getExtent(),o=t.getPointData().getScalars().
getNumberOfComponents(),f=t.computeIncrements(i,o);return Math.floor((Math.round(n)-i[0])*f[0]+(Math.round(a)-i[2])*f[1]+
(Math.round(s)-i[4])*f[2])},t.getOffsetIndexFromWorld=n=>{let a=t.getExtent(),s=t.worldToIndex(n);for(let i=0;i<3;++i)if(s[i]<
a[i*2]||s[i]>a[i*2+1])return it(`GetScalarPointer: Pixel ${s} is not in memory. Current extent = ${a}`),NaN;return t.computeOffsetIndex(
s)},t.getScalarValueFromWorld=(n,a=0)=>{let s=t.getPointData().getScalars().getNumberOfComponents();if(a<0||a>=s)return it(
`GetScalarPointer: Scalar Component ${a} is not within bounds. Current Scalar numberOfComponents: ${s}`),NaN;let i=t.getOffsetIndexFromWorld(
n);return Number.isNaN(i)?i:t.getPointData().getScalars().getComponent(i,a)};let r=t.initialize;t.initialize=()=>(t.set(
{direction:ce.identity(e.direction),spacing:[1,1,1],origin:[0,0,0],extent:[0,-1,0,-1,0,-1],dataDescription:de.EMPTY}),r())}
var Qv={direction:null,indexToWorld:null,worldToIndex:null,spacing:[1,1,1],origin:[0,0,0],extent:[0,-1,0,-1,0,-1],dataDescription:de.
EMPTY};function yf(t,e,r={}){Object.assign(e,Qv,r),_e.extend(t,e,r),e.direction?Array.isArray(e.direction)&&(e.direction=
new Float64Array(e.direction.slice(0,9))):e.direction=ce.identity(new Float64Array(9)),e.indexToWorld=new Float64Array(16),
e.worldToIndex=new Float64Array(16),E.get(t,e,["indexToWorld","worldToIndex"]),E.setGetArray(t,e,["origin","spacing"],3),
E.setGetArray(t,e,["direction"],9),E.getArray(t,e,["extent"],6),Zv(t,e)}var Jv=E.newInstance(yf,"vtkImageData"),xf={newInstance:Jv,
extend:yf};var Iv={MAGNITUDE:0,COMPONENT:1,RGBCOLORS:2},Jr={LUMINANCE:1,LUMINANCE_ALPHA:2,RGB:3,RGBA:4},Pv={LINEAR:0,LOG10:1},Yt={VectorMode:Iv,
ScalarMappingTarget:Jr,Scale:Pv};var{ScalarMappingTarget:Cf,Scale:bv,VectorMode:Ve}=Yt,{VtkDataTypes:Qe}=Y,{ColorMode:Ir}=St,{vtkErrorMacro:Sf}=E;function eT(t){
return t}function Mf(t){return Math.floor(t*255+.5)}function tT(t,e){e.classHierarchy.push("vtkScalarsToColors"),t.setVectorModeToMagnitude=
()=>t.setVectorMode(Ve.MAGNITUDE),t.setVectorModeToComponent=()=>t.setVectorMode(Ve.COMPONENT),t.setVectorModeToRGBColors=
()=>t.setVectorMode(Ve.RGBCOLORS),t.build=()=>{},t.isOpaque=()=>!0,t.setAnnotations=(r,n)=>{if(!(r&&!n||!r&&n)){if(r&&n&&
r.length!==n.length){Sf("Values and annotations do not have the same number of tuples so ignoring");return}if(e.annotationArray=
[],n&&r){let a=n.length;for(let s=0;s<a;s++)e.annotationArray.push({value:r[s],annotation:String(n[s])})}t.updateAnnotatedValueMap(),
t.modified()}},t.setAnnotation=(r,n)=>{let a=t.checkForAnnotatedValue(r),s=!1;return a>=0?e.annotationArray[a].annotation!==
n&&(e.annotationArray[a].annotation=n,s=!0):(e.annotationArray.push({value:r,annotation:n}),a=e.annotationArray.length-1,
s=!0),s&&(t.updateAnnotatedValueMap(),t.modified()),a},t.getNumberOfAnnotatedValues=()=>e.annotationArray.length,t.getAnnotatedValue=
r=>r<0||r>=e.annotationArray.length?null:e.annotationArray[r].value,t.getAnnotation=r=>e.annotationArray[r]===void 0?null:
e.annotationArray[r].annotation,t.getAnnotatedValueIndex=r=>e.annotationArray.length?t.checkForAnnotatedValue(r):-1,t.removeAnnotation=
r=>{let n=t.checkForAnnotatedValue(r),a=n>=0;return a&&(e.annotationArray.splice(n,1),t.updateAnnotatedValueMap(),t.modified()),
a},t.resetAnnotations=()=>{e.annotationArray=[],e.annotatedValueMap=[],t.modified()},t.getAnnotationColor=(r,n)=>{if(e.indexedLookup){
let a=t.getAnnotatedValueIndex(r);t.getIndexedColor(a,n)}else t.getColor(parseFloat(r),n),n[3]=1},t.checkForAnnotatedValue=
r=>t.getAnnotatedValueIndexInternal(r),t.getAnnotatedValueIndexInternal=r=>{if(e.annotatedValueMap[r]!==void 0){let n=e.
annotationArray.length;return e.annotatedValueMap[r]%n}return-1},t.getIndexedColor=(r,n)=>{n[0]=0,n[1]=0,n[2]=0,n[3]=0},
t.updateAnnotatedValueMap=()=>{e.annotatedValueMap=[];let r=e.annotationArray.length;for(let n=0;n<r;n++)e.annotatedValueMap[e.
annotationArray[n].value]=n},t.mapScalars=(r,n,a)=>{let s=r.getNumberOfComponents(),i=null;if(n===Ir.DEFAULT&&(r.getDataType()===
Qe.UNSIGNED_CHAR||r.getDataType()===Qe.UNSIGNED_CHAR_CLAMPED)||n===Ir.DIRECT_SCALARS&&r)i=t.convertToRGBA(r,s,r.getNumberOfTuples());else{
let o={type:"vtkDataArray",name:"temp",numberOfComponents:4,dataType:Qe.UNSIGNED_CHAR},f=E.newTypedArray(o.dataType,4*r.
getNumberOfTuples());o.values=f,o.size=f.length,i=Y.newInstance(o);let c=a;c<0&&s>1?t.mapVectorsThroughTable(r,i,Cf.RGBA,
-1,-1):(c<0&&(c=0),c>=s&&(c=s-1),t.mapScalarsThroughTable(r,i,Cf.RGBA,c))}return i},t.mapVectorsToMagnitude=(r,n,a)=>{let s=r.
getNumberOfTuples(),i=r.getNumberOfComponents(),o=n.getData(),f=r.getData();for(let c=0;c<s;c++){let u=0;for(let h=0;h<a;h++)
u+=f[c*i+h]*f[c*i+h];o[c]=Math.sqrt(u)}},t.mapVectorsThroughTable=(r,n,a,s,i)=>{let o=t.getVectorMode(),f=i,c=s,u=r.getNumberOfComponents();
o===Ve.COMPONENT?(c===-1&&(c=t.getVectorComponent()),c<0&&(c=0),c>=u&&(c=u-1)):(f===-1&&(f=t.getVectorSize()),f<=0?(c=0,
f=u):(c<0&&(c=0),c>=u&&(c=u-1),c+f>u&&(f=u-c)),o===Ve.MAGNITUDE&&(u===1||f===1)&&(o=Ve.COMPONENT));let h=0;switch(c>0&&(h=
c),o){case Ve.COMPONENT:t.mapScalarsThroughTable(r,n,a,h);break;case Ve.RGBCOLORS:break;case Ve.MAGNITUDE:default:{let l=Y.
newInstance({numberOfComponents:1,values:new Float32Array(r.getNumberOfTuples())});t.mapVectorsToMagnitude(r,l,f),t.mapScalarsThroughTable(
l,n,a,0);break}}},t.luminanceToRGBA=(r,n,a,s)=>{let i=s(a),o=n.getData(),f=r.getData(),c=o.length,u=0,h=1,l=0;for(let p=u;p<
c;p+=h){let x=s(o[p]);f[l*4]=x,f[l*4+1]=x,f[l*4+2]=x,f[l*4+3]=i,l++}},t.luminanceAlphaToRGBA=(r,n,a,s)=>{let i=n.getData(),
o=r.getData(),f=i.length,c=0,u=2,h=0;for(let l=c;l<f;l+=u){let p=s(i[l]);o[h]=p,o[h+1]=p,o[h+2]=p,o[h+3]=s(i[l+1])*a,h+=
4}},t.rGBToRGBA=(r,n,a,s)=>{let i=Mf(a),o=n.getData(),f=r.getData(),c=o.length,u=0,h=3,l=0;for(let p=u;p<c;p+=h)f[l*4]=s(
o[p]),f[l*4+1]=s(o[p+1]),f[l*4+2]=s(o[p+2]),f[l*4+3]=i,l++},t.rGBAToRGBA=(r,n,a,s)=>{let i=n.getData(),o=r.getData(),f=i.
length,c=0,u=4,h=0;for(let l=c;l<f;l+=u)o[h*4]=s(i[l]),o[h*4+1]=s(i[l+1]),o[h*4+2]=s(i[l+2]),o[h*4+3]=s(i[l+3])*a,h++},t.
convertToRGBA=(r,n,a)=>{let{alpha:s}=e;if(n===4&&s>=1&&r.getDataType()===Qe.UNSIGNED_CHAR)return r;let i=Y.newInstance({
numberOfComponents:4,empty:!0,size:4*a,dataType:Qe.UNSIGNED_CHAR});if(a<=0)return i;s=s>0?s:0,s=s<1?s:1;let o=eT;switch((r.
getDataType()===Qe.FLOAT||r.getDataType()===Qe.DOUBLE)&&(o=Mf),n){case 1:t.luminanceToRGBA(i,r,s,o);break;case 2:t.luminanceAlphaToRGBA(
i,r,o);break;case 3:t.rGBToRGBA(i,r,s,o);break;case 4:t.rGBAToRGBA(i,r,s,o);break;default:return Sf("Cannot convert colo\
rs"),null}return i},t.usingLogScale=()=>!1,t.getNumberOfAvailableColors=()=>256*256*256,t.setRange=(r,n)=>t.setMappingRange(
r,n),t.getRange=()=>t.getMappingRange(),t.areScalarsOpaque=(r,n,a)=>{if(!r)return t.isOpaque();let s=r.getNumberOfComponents();
return n===Ir.DEFAULT&&r.getDataType()===Qe.UNSIGNED_CHAR||n===Ir.DIRECT_SCALARS?s===3||s===1?e.alpha>=1:r.getRange(s-1)[0]===
255:!0}}var rT={alpha:1,vectorComponent:0,vectorSize:-1,vectorMode:Ve.COMPONENT,mappingRange:null,annotationArray:null,annotatedValueMap:null,
indexedLookup:!1,scale:bv.LINEAR};function df(t,e,r={}){Object.assign(e,rT,r),E.obj(t,e),e.mappingRange=[0,255],e.annotationArray=
[],e.annotatedValueMap=[],E.setGet(t,e,["vectorSize","vectorComponent","vectorMode","alpha","indexedLookup"]),E.setArray(
t,e,["mappingRange"],2),E.getArray(t,e,["mappingRange"]),tT(t,e)}var nT=E.newInstance(df,"vtkScalarsToColors"),Ef={newInstance:nT,
extend:df,...Yt};var{vtkErrorMacro:Rf}=E,wf=0,Of=1,ja=2;function aT(t,e){e.classHierarchy.push("vtkLookupTable"),t.isOpaque=()=>{if(e.opaqueFlagBuildTime.
getMTime()<t.getMTime()){let r=!0;e.nanColor[3]<1&&(r=0),e.useBelowRangeColor&&e.belowRangeColor[3]<1&&(r=0),e.useAboveRangeColor&&
e.aboveRangeColor[3]<1&&(r=0);for(let n=3;n<e.table.length&&r;n+=4)e.table[n]<255&&(r=!1);e.opaqueFlag=r,e.opaqueFlagBuildTime.
modified()}return e.opaqueFlag},t.usingLogScale=()=>!1,t.getNumberOfAvailableColors=()=>e.table.length/4-3,t.linearIndexLookup=
(r,n)=>{let a=0,s=Number(r);return s<n.range[0]?a=n.maxIndex+wf+1.5:s>n.range[1]?a=n.maxIndex+Of+1.5:(a=(s+n.shift)*n.scale,
a=a<n.maxIndex?a:n.maxIndex),Math.floor(a)},t.linearLookup=(r,n,a)=>{let s=0;Ur(r)?s=Math.floor(a.maxIndex+1.5+ja):s=t.linearIndexLookup(
r,a);let i=4*s;return n.slice(i,i+4)},t.indexedLookupFunction=(r,n,a)=>{let s=t.getAnnotatedValueIndexInternal(r);s===-1&&
(s=e.numberOfColors+ja);let i=4*s;return[n[i],n[i+1],n[i+2],n[i+3]]},t.lookupShiftAndScale=(r,n)=>{n.shift=-r[0],n.scale=
Number.MAX_VALUE,r[1]>r[0]&&(n.scale=(n.maxIndex+1)/(r[1]-r[0]))},t.mapScalarsThroughTable=(r,n,a,s)=>{let i=t.linearLookup;
e.indexedLookup&&(i=t.indexedLookupFunction);let o=t.getMappingRange(),f={maxIndex:t.getNumberOfColors()-1,range:o,shift:0,
scale:0};t.lookupShiftAndScale(o,f);let c=t.getAlpha(),u=r.getNumberOfTuples(),h=r.getNumberOfComponents(),l=n.getData(),
p=r.getData();if(c>=1){if(a===Jr.RGBA)for(let x=0;x<u;x++){let g=i(p[x*h+s],e.table,f);l[x*4]=g[0],l[x*4+1]=g[1],l[x*4+2]=
g[2],l[x*4+3]=g[3]}}else if(a===Jr.RGBA)for(let x=0;x<u;x++){let g=i(p[x*h+s],e.table,f);l[x*4]=g[0],l[x*4+1]=g[1],l[x*4+
2]=g[2],l[x*4+3]=Math.floor(g[3]*c+.5)}},t.forceBuild=()=>{let r=0,n=0,a=0,s=0,i=e.numberOfColors-1;i&&(r=(e.hueRange[1]-
e.hueRange[0])/i,n=(e.saturationRange[1]-e.saturationRange[0])/i,a=(e.valueRange[1]-e.valueRange[0])/i,s=(e.alphaRange[1]-
e.alphaRange[0])/i),e.table.length=4*i+16;let o=[],f=[];for(let c=0;c<=i;c++)o[0]=e.hueRange[0]+c*r,o[1]=e.saturationRange[0]+
c*n,o[2]=e.valueRange[0]+c*a,xa(o,f),f[3]=e.alphaRange[0]+c*s,e.table[c*4]=f[0]*255+.5,e.table[c*4+1]=f[1]*255+.5,e.table[c*
4+2]=f[2]*255+.5,e.table[c*4+3]=f[3]*255+.5;t.buildSpecialColors(),e.buildTime.modified()},t.setTable=r=>{if(Array.isArray(
r)){let a=r[0].length;e.numberOfColors=r.length;let s=4-a,i=0;for(let o=0;o<e.numberOfColors;o++)e.table[o*4]=255,e.table[o*
4+1]=255,e.table[o*4+2]=255,e.table[o*4+3]=255;for(let o=0;o<r.length;o++){let f=r[o];for(let c=0;c<a;c++)e.table[i++]=f[c];
i+=s}return t.buildSpecialColors(),e.insertTime.modified(),t.modified(),!0}if(r.getNumberOfComponents()!==4)return Rf("E\
xpected 4 components for RGBA colors"),!1;if(r.getDataType()!==ee.UNSIGNED_CHAR)return Rf("Expected unsigned char values\
 for RGBA colors"),!1;e.numberOfColors=r.getNumberOfTuples();let n=r.getData();e.table.length=n.length;for(let a=0;a<n.length;a++)
e.table[a]=n[a];return t.buildSpecialColors(),e.insertTime.modified(),t.modified(),!0},t.buildSpecialColors=()=>{let{numberOfColors:r}=e,
n=e.table,a=(r+wf)*4;e.useBelowRangeColor||r===0?(n[a]=e.belowRangeColor[0]*255+.5,n[a+1]=e.belowRangeColor[1]*255+.5,n[a+
2]=e.belowRangeColor[2]*255+.5,n[a+3]=e.belowRangeColor[3]*255+.5):(n[a]=n[0],n[a+1]=n[1],n[a+2]=n[2],n[a+3]=n[3]),a=(r+
Of)*4,e.useAboveRangeColor||r===0?(n[a]=e.aboveRangeColor[0]*255+.5,n[a+1]=e.aboveRangeColor[1]*255+.5,n[a+2]=e.aboveRangeColor[2]*
255+.5,n[a+3]=e.aboveRangeColor[3]*255+.5):(n[a]=n[4*(r-1)+0],n[a+1]=n[4*(r-1)+1],n[a+2]=n[4*(r-1)+2],n[a+3]=n[4*(r-1)+3]),
a=(r+ja)*4,n[a]=e.nanColor[0]*255+.5,n[a+1]=e.nanColor[1]*255+.5,n[a+2]=e.nanColor[2]*255+.5,n[a+3]=e.nanColor[3]*255+.5},
t.build=()=>{(e.table.length<1||t.getMTime()>e.buildTime.getMTime()&&e.insertTime.getMTime()<=e.buildTime.getMTime())&&t.
forceBuild()},e.table.length>0&&(t.buildSpecialColors(),e.insertTime.modified())}var sT={numberOfColors:256,hueRange:[0,
.66667],saturationRange:[1,1],valueRange:[1,1],alphaRange:[1,1],nanColor:[.5,0,0,1],belowRangeColor:[0,0,0,1],aboveRangeColor:[
1,1,1,1],useAboveRangeColor:!1,useBelowRangeColor:!1,alpha:1};function Lf(t,e,r={}){Object.assign(e,sT,r),Ef.extend(t,e,
r),e.table||(e.table=[]),e.buildTime={},E.obj(e.buildTime),e.opaqueFlagBuildTime={},E.obj(e.opaqueFlagBuildTime,{mtime:0}),
e.insertTime={},E.obj(e.insertTime,{mtime:0}),E.get(t,e,["buildTime"]),E.setGet(t,e,["numberOfColors","useAboveRangeColo\
r","useBelowRangeColor"]),E.setArray(t,e,["alphaRange","hueRange","saturationRange","valueRange"],2),E.setArray(t,e,["na\
nColor","belowRangeColor","aboveRangeColor"],4),E.getArray(t,e,["hueRange","saturationRange","valueRange","alphaRange","\
nanColor","belowRangeColor","aboveRangeColor"]),aT(t,e)}var iT=E.newInstance(Lf,"vtkLookupTable"),Pr={newInstance:iT,extend:Lf};var{ColorMode:br,ScalarMode:ot,GetArray:qt}=St,{VectorMode:oT}=Yt,{VtkDataTypes:fT}=Y;function cT(t,e){let r=t[1]%2===0?
1:-1;if(t[0]+=r,t[0]>=e[0]||t[0]<0){let n=t[2]%2===0?1:-1;t[0]-=r,t[1]+=n,(t[1]>=e[1]||t[1]<0)&&(t[1]-=n,t[2]++)}}function uT(t,e){
return t[0]+e[0]*(t[1]+e[1]*t[2])}function Df(t,e,r){let n=Math.floor(e),a=n%(2*r[0]),s,i;a<r[0]?(t[0]=a,s=1,i=t[0]===r[0]-
1):(t[0]=2*r[0]-1-a,s=-1,i=t[0]===0);let o=Math.floor(n/r[0]),f=o%(2*r[1]),c,u;f<r[1]?(t[1]=f,c=1,u=t[1]===r[1]-1):(t[1]=
2*r[1]-1-f,c=-1,u=t[1]===0),t[2]=Math.floor(o/r[1]);let h=e-n;i?u?t[2]+=h:t[1]+=c*h:t[0]+=s*h,t[0]=(t[0]+.5)/r[0],t[1]=(t[1]+
.5)/r[1],t[2]=(t[2]+.5)/r[2]}var _f=new WeakMap;function mf(t,e,r,n,a,s,i){let o=new Array(arguments.length);for(let m=0;m<
arguments.length;++m){let V=arguments[m];o[m]=V.getMTime?.()??V}let f=o.join("/"),c=_f.get(t);if(c&&c.stringHash===f)return c.
textureCoordinates;let u=(r[1]-r[0])/(a-1),[h,l]=[r[0]-u,r[1]+u],p=h-.5*u,x=1/(l-h+u),g=h,y=(a+1)/(l-h),C=t.getData(),M=t.
getNumberOfTuples(),v=t.getNumberOfComponents(),T=e<0||e>=v,S=s[2]<=1?2:3,d=Y.newInstance({numberOfComponents:S,values:new Float32Array(
M*S)}),R=d.getData(),w=[0,0,0];Df(w,a+2,s);let L=0,O=0,D=[.5,.5,.5];for(let m=0;m<M;++m){let V;if(T){let F=0;for(let G=0;G<
v;++G){let B=Number(C[L+G]);F+=B*B}V=Math.sqrt(F)}else V=Number(C[L+e]);if(n&&(V=Math.log10(V)),L+=v,Ur(V))D[0]=w[0],D[1]=
w[1],D[2]=w[2];else if(i){let F=(V-g)*y;F<1?F=0:F>a&&(F=a+1),Df(D,F,s)}else{D[1]=.49;let F=(V-p)*x;F>1e3?D[0]=1e3:F<-1e3?
D[0]=-1e3:D[0]=F}for(let F=0;F<S;++F)R[O++]=D[F]}return _f.set(t,{stringHash:f,textureCoordinates:d}),d}function gT(t,e){
t.createDefaultLookupTable=()=>{e.lookupTable=Pr.newInstance()},t.getColorModeAsString=()=>E.enumToString(br,e.colorMode),
t.setColorModeToDefault=()=>t.setColorMode(0),t.setColorModeToMapScalars=()=>t.setColorMode(1),t.setColorModeToDirectScalars=
()=>t.setColorMode(2),t.getScalarModeAsString=()=>E.enumToString(ot,e.scalarMode),t.setScalarModeToDefault=()=>t.setScalarMode(
0),t.setScalarModeToUsePointData=()=>t.setScalarMode(1),t.setScalarModeToUseCellData=()=>t.setScalarMode(2),t.setScalarModeToUsePointFieldData=
()=>t.setScalarMode(3),t.setScalarModeToUseCellFieldData=()=>t.setScalarMode(4),t.setScalarModeToUseFieldData=()=>t.setScalarMode(
5),t.getAbstractScalars=(r,n,a,s,i)=>{if(!r||!e.scalarVisibility)return{scalars:null,cellFlag:!1};let o=null,f=!1;if(n===
ot.DEFAULT)o=r.getPointData().getScalars(),o||(o=r.getCellData().getScalars(),f=!0);else if(n===ot.USE_POINT_DATA){let c=r.
getPointData();a===qt.BY_ID?o=c.getArrayByIndex(s):i&&(o=c.getArrayByName(i)),o||(o=c.getScalars())}else if(n===ot.USE_CELL_DATA){
let c=r.getCellData();f=!0,a===qt.BY_ID?o=c.getArrayByIndex(s):i&&(o=c.getArrayByName(i)),o||(o=c.getScalars())}else if(n===
ot.USE_POINT_FIELD_DATA){let c=r.getPointData();a===qt.BY_ID?o=c.getArrayByIndex(s):o=c.getArrayByName(i)}else if(n===ot.
USE_CELL_FIELD_DATA){let c=r.getCellData();f=!0,a===qt.BY_ID?o=c.getArrayByIndex(s):o=c.getArrayByName(i)}else if(n===ot.
USE_FIELD_DATA){let c=r.getFieldData();a===qt.BY_ID?o=c.getArrayByIndex(s):o=c.getArrayByName(i)}return{scalars:o,cellFlag:f}},
t.mapScalars=(r,n)=>{let{scalars:a,cellFlag:s}=t.getAbstractScalars(r,e.scalarMode,e.arrayAccessMode,e.arrayId,e.colorByArrayName);
if(e.areScalarsMappedFromCells=s,!a){e.colorCoordinates=null,e.colorTextureMap=null,e.colorMapColors=null;return}let i=`${t.
getMTime()}${a.getMTime()}${n}`;if(e.colorBuildString!==i){if(e.useLookupTableScalarRange||t.getLookupTable().setRange(e.
scalarRange[0],e.scalarRange[1]),t.canUseTextureMapForColoring(a,s))e.mapScalarsToTexture(a,s,n);else{e.colorCoordinates=
null,e.colorTextureMap=null;let o=t.getLookupTable();o&&(o.build(),e.colorMapColors=o.mapScalars(a,e.colorMode,e.fieldDataTupleId))}
e.colorBuildString=`${t.getMTime()}${a.getMTime()}${n}`}},e.mapScalarsToTexture=(r,n,a)=>{let s=e.lookupTable.getRange(),
i=e.lookupTable.usingLogScale(),o=e.lookupTable.getAlpha(),f=i?[Math.log10(s[0]),Math.log10(s[1])]:s;if(e.colorMapColors=
null,e.colorTextureMap==null||t.getMTime()>e.colorTextureMap.getMTime()||e.lookupTable.getMTime()>e.colorTextureMap.getMTime()||
e.lookupTable.getAlpha()!==a){e.lookupTable.setAlpha(a),e.colorTextureMap=null,e.lookupTable.build();let c=e.lookupTable.
getNumberOfAvailableColors(),u=2048;e.numberOfColorsInRange=Math.min(Math.max(c,2),n?u**3-3:4094);let h=e.numberOfColorsInRange+
3,l=e.numberOfColorsInRange+2,p=n?[Math.min(Math.ceil(h/u**0),u),Math.min(Math.ceil(h/u**1),u),Math.min(Math.ceil(h/u**2),
u)]:[l,2,1],x=p[0]*p[1]*p[2],g=new Float64Array(x);g.fill(NaN);let y=e.numberOfColorsInRange,C=y+2,M=[0,0,0],v=f[0],T=f[1]-
f[0];for(let R=0;R<C;++R){let w=uT(M,p),L=v+T*(R-1)/(y-1);g[w]=i?10**L:L,cT(M,p)}let S=Y.newInstance({numberOfComponents:1,
values:g}),d=e.lookupTable.mapScalars(S,e.colorMode,0);e.colorTextureMap=xf.newInstance(),e.colorTextureMap.setDimensions(
p),e.colorTextureMap.getPointData().setScalars(d),e.lookupTable.setAlpha(o)}e.colorCoordinates=mf(r,e.lookupTable.getVectorMode()===
oT.MAGNITUDE&&r.getNumberOfComponents()>1?-1:e.lookupTable.getVectorComponent(),f,i,e.numberOfColorsInRange,e.colorTextureMap.
getDimensions(),n)},t.canUseTextureMapForColoring=(r,n)=>n&&e.colorMode!==br.DIRECT_SCALARS?!0:!(e.lookupTable&&e.lookupTable.
getIndexedLookup()||!e.interpolateScalarsBeforeMapping||!r||e.colorMode===br.DEFAULT&&r.getDataType()===fT.UNSIGNED_CHAR||
e.colorMode===br.DIRECT_SCALARS),t.clearColorArrays=()=>{e.colorMapColors=null,e.colorCoordinates=null,e.colorTextureMap=
null},t.getLookupTable=()=>(e.lookupTable||t.createDefaultLookupTable(),e.lookupTable),t.getMTime=()=>{let r=e.mtime;if(e.
lookupTable!==null){let n=e.lookupTable.getMTime();r=n>r?n:r}return r}}var Ka={colorMapColors:null,areScalarsMappedFromCells:!1,
lookupTable:null,scalarVisibility:!0,scalarRange:[0,1],useLookupTableScalarRange:!1,colorMode:0,scalarMode:0,arrayAccessMode:1,
colorByArrayName:null,fieldDataTupleId:-1,interpolateScalarsBeforeMapping:!1,colorCoordinates:null,colorTextureMap:null,
numberOfColorsInRange:0};function hT(t,e){Object.keys(Ka).forEach(r=>{if(e[r]===void 0){let n=Ka[r];e[r]=Array.isArray(n)?
n.slice():n}}),E.get(t,e,["areScalarsMappedFromCells","colorCoordinates","colorMapColors","colorTextureMap","numberOfCol\
orsInRange"]),E.setGet(t,e,["colorByArrayName","arrayAccessMode","colorMode","fieldDataTupleId","interpolateScalarsBefor\
eMapping","lookupTable","scalarMode","scalarVisibility","useLookupTableScalarRange"]),E.setGetArray(t,e,["scalarRange"],
2),gT(t,e)}var Ff={implementScalarColoringMethods:hT,DEFAULT_VALUES:Ka,getOrCreateColorTextureCoordinates:mf};var{FieldAssociations:Nf}=_e,{staticOffsetAPI:lT,otherStaticMethods:pT}=Ha;function Zt(t){return()=>E.vtkErrorMacro(`vtk\
Mapper::${t} - NOT IMPLEMENTED`)}function vT(t,e){e.classHierarchy.push("vtkMapper"),t.computeBounds=()=>{let r=t.getInputData();
r?(e.static||t.update(),H.setBounds(e.bounds,r.getBounds())):H.reset(e.bounds)},t.setForceCompileOnly=r=>{e.forceCompileOnly=
r},t.setSelectionWebGLIdsToVTKIds=r=>{e.selectionWebGLIdsToVTKIds=r},t.getIsOpaque=()=>{let r=t.getInputData(),n=t.getAbstractScalars(
r,e.scalarMode,e.arrayAccessMode,e.arrayId,e.colorByArrayName).scalars;if(!e.scalarVisibility||n==null)return!0;let a=t.
getLookupTable();return a?(a.build(),a.areScalarsOpaque(n,e.colorMode,-1)):!0},t.getPrimitiveCount=()=>{let r=t.getInputData();
return{points:r.getPoints().getNumberOfValues()/3,verts:r.getVerts().getNumberOfValues()-r.getVerts().getNumberOfCells(),
lines:r.getLines().getNumberOfValues()-2*r.getLines().getNumberOfCells(),triangles:r.getPolys().getNumberOfValues()-3*r.
getPolys().getNumberOfCells()}},t.acquireInvertibleLookupTable=Zt("AcquireInvertibleLookupTable"),t.valueToColor=Zt("Val\
ueToColor"),t.colorToValue=Zt("ColorToValue"),t.useInvertibleColorFor=Zt("UseInvertibleColorFor"),t.clearInvertibleColor=
Zt("ClearInvertibleColor"),t.processSelectorPixelBuffers=(r,n)=>{if(!r||!e.selectionWebGLIdsToVTKIds||!e.populateSelectionSettings)
return;let a=r.getRawPixelBuffer(he.ID_LOW24),s=r.getRawPixelBuffer(he.ID_HIGH24),i=r.getCurrentPass(),o=r.getFieldAssociation(),
f=null;o===Nf.FIELD_ASSOCIATION_POINTS?f=e.selectionWebGLIdsToVTKIds.points:o===Nf.FIELD_ASSOCIATION_CELLS&&(f=e.selectionWebGLIdsToVTKIds.
cells),f&&n.forEach(c=>{if(i===he.ID_LOW24){let u=0;s&&(u+=s[c],u*=256),u+=a[c+2],u*=256,u+=a[c+1],u*=256,u+=a[c];let h=f[u],
l=r.getPixelBuffer(he.ID_LOW24);l[c]=h&255,l[c+1]=(h&65280)>>8,l[c+2]=(h&16711680)>>16}else if(i===he.ID_HIGH24&&s){let u=0;
u+=s[c],u*=256,u+=a[c+2],u*=256,u+=a[c+1],u*=256,u+=a[c];let h=f[u],l=r.getPixelBuffer(he.ID_HIGH24);l[c]=(h&4278190080)>>
24}})}}var TT={static:!1,renderTime:0,populateSelectionSettings:!0,selectionWebGLIdsToVTKIds:null,forceCompileOnly:0,useInvertibleColors:!1,
invertibleScalars:null,customShaderAttributes:[],debugChannel:0};function Vf(t,e,r={}){Object.assign(e,TT,r),vf.extend(t,
e,r),Ff.implementScalarColoringMethods(t,e),E.get(t,e,["selectionWebGLIdsToVTKIds"]),E.setGet(t,e,["populateSelectionSet\
tings","renderTime","static","customShaderAttributes","debugChannel"]),Ha.implementCoincidentTopologyMethods(t,e),vT(t,e)}
var yT=E.newInstance(Vf,"vtkMapper"),en={newInstance:yT,extend:Vf,...lT,...pT,...St};var Bf=new Float32Array(1),xT=new Int32Array(Bf.buffer);function CT(t){Bf[0]=t;let e=xT[0],r=e>>16&32768,n=e>>12&2047,a=e>>
23&255;return a<103?r:a>142?(r|=31744,r|=(a===255?0:1)&&e&8388607,r):a<113?(n|=2048,r|=(n>>114-a)+(n>>113-a&1),r):(r|=a-
112<<10|n>>1,r+=n&1,r)}function ST(t){let e=(t&32768)>>15,r=(t&31744)>>10,n=t&1023;return r===0?(e?-1:1)*2**-14*(n/2**10):
r===31?n?NaN:(e?-1:1)*(1/0):(e?-1:1)*2**(r-15)*(1+n/2**10)}var Uf={fromHalf:ST,toHalf:CT};var MT={CLAMP_TO_EDGE:0,REPEAT:1,MIRRORED_REPEAT:2},tn={NEAREST:0,LINEAR:1,NEAREST_MIPMAP_NEAREST:2,NEAREST_MIPMAP_LINEAR:3,
LINEAR_MIPMAP_NEAREST:4,LINEAR_MIPMAP_LINEAR:5},$a={Wrap:MT,Filter:tn};function dT(){try{let n=new Int16Array([0,32767]),a=[1,1],s=document.createElement("canvas");s.width=4,s.height=4;let i=s.
getContext("webgl2");if(!i)return!1;let o=i.getExtension("EXT_texture_norm16");if(!o)return!1;let f=`#version 300 es
    void main() {
      gl_PointSize = ${4 .toFixed(1)};
      gl_Position = vec4(0, 0, 0, 1);
    }
  `,c=`#version 300 es
    precision highp float;
    precision highp int;
    precision highp sampler2D;

    uniform sampler2D u_image;

    out vec4 color;

    void main() {
        vec4 intColor = texture(u_image, gl_PointCoord.xy);
        color = vec4(vec3(intColor.rrr), 1);
    }
    `,u=i.createShader(i.VERTEX_SHADER);if(i.shaderSource(u,f),i.compileShader(u),!i.getShaderParameter(u,i.COMPILE_STATUS))
return!1;let h=i.createShader(i.FRAGMENT_SHADER);if(i.shaderSource(h,c),i.compileShader(h),!i.getShaderParameter(h,i.COMPILE_STATUS))
return!1;let l=i.createProgram();if(i.attachShader(l,u),i.attachShader(l,h),i.linkProgram(l),!i.getProgramParameter(l,i.
LINK_STATUS))return!1;let p=i.createTexture();i.bindTexture(i.TEXTURE_2D,p),i.texImage2D(i.TEXTURE_2D,0,o.R16_SNORM_EXT,
2,1,0,i.RED,i.SHORT,n),i.texParameteri(i.TEXTURE_2D,i.TEXTURE_MAG_FILTER,i.LINEAR),i.texParameteri(i.TEXTURE_2D,i.TEXTURE_MIN_FILTER,
i.LINEAR),i.useProgram(l),i.drawArrays(i.POINTS,0,1);let x=new Uint8Array(4);i.readPixels(a[0],a[1],1,1,i.RGBA,i.UNSIGNED_BYTE,
x);let[g,y,C]=x,M=i.getExtension("WEBGL_lose_context");return M&&M.loseContext(),g===y&&y===C&&g!==0}catch{return!1}}var Xa;
function Gf(){return Xa===void 0&&(Xa=dT()),Xa}var zf=ur(Un(),1),{Wrap:We,Filter:se}=$a,{VtkDataTypes:$}=Y,{vtkDebugMacro:Ya,vtkErrorMacro:Mt,vtkWarningMacro:kf,requiredParam:j}=Xe,
{toHalf:ET}=Uf;function RT(t,e){e.classHierarchy.push("vtkOpenGLTexture");function r(){return{internalFormat:e.internalFormat,
format:e.format,openGLDataType:e.openGLDataType,width:e.width,height:e.height}}t.render=(p=null)=>{if(p?e._openGLRenderWindow=
p:(e._openGLRenderer=t.getFirstAncestorOfType("vtkOpenGLRenderer"),e._openGLRenderWindow=e._openGLRenderer.getLastAncestorOfType(
"vtkOpenGLRenderWindow")),e.context=e._openGLRenderWindow.getContext(),e.renderable.getInterpolate()?(e.generateMipmap?t.
setMinificationFilter(se.LINEAR_MIPMAP_LINEAR):t.setMinificationFilter(se.LINEAR),t.setMagnificationFilter(se.LINEAR)):(t.
setMinificationFilter(se.NEAREST),t.setMagnificationFilter(se.NEAREST)),e.renderable.getRepeat()&&(t.setWrapR(We.REPEAT),
t.setWrapS(We.REPEAT),t.setWrapT(We.REPEAT)),e.renderable.getInputData()&&e.renderable.setImage(null),!e.handle||e.renderable.
getMTime()>e.textureBuildTime.getMTime()){if(e.renderable.getImageBitmap()!==null&&(e.renderable.getInterpolate()&&(e.generateMipmap=
!0,t.setMinificationFilter(se.LINEAR_MIPMAP_LINEAR)),e.renderable.getImageBitmap()&&e.renderable.getImageLoaded()&&(t.create2DFromImageBitmap(
e.renderable.getImageBitmap()),t.activate(),t.sendParameters(),e.textureBuildTime.modified())),e.renderable.getImage()!==
null&&(e.renderable.getInterpolate()&&(e.generateMipmap=!0,t.setMinificationFilter(se.LINEAR_MIPMAP_LINEAR)),e.renderable.
getImage()&&e.renderable.getImageLoaded()&&(t.create2DFromImage(e.renderable.getImage()),t.activate(),t.sendParameters(),
e.textureBuildTime.modified())),e.renderable.getCanvas()!==null){e.renderable.getInterpolate()&&(e.generateMipmap=!0,t.setMinificationFilter(
se.LINEAR_MIPMAP_LINEAR));let g=e.renderable.getCanvas();t.create2DFromRaw({width:g.width,height:g.height,numComps:4,dataType:$.
UNSIGNED_CHAR,data:g,flip:!0}),t.activate(),t.sendParameters(),e.textureBuildTime.modified()}if(e.renderable.getJsImageData()!==
null){let g=e.renderable.getJsImageData();e.renderable.getInterpolate()&&(e.generateMipmap=!0,t.setMinificationFilter(se.
LINEAR_MIPMAP_LINEAR)),t.create2DFromRaw({width:g.width,height:g.height,numComps:4,dataType:$.UNSIGNED_CHAR,data:g.data,
flip:!0}),t.activate(),t.sendParameters(),e.textureBuildTime.modified()}let x=e.renderable.getInputData(0);if(x&&x.getPointData().
getScalars()){let g=x.getExtent(),y=x.getPointData().getScalars(),C=[];for(let M=0;M<e.renderable.getNumberOfInputPorts();++M){
let v=e.renderable.getInputData(M),T=v?v.getPointData().getScalars().getData():null;T&&C.push(T)}e.renderable.getInterpolate()&&
y.getNumberOfComponents()===4&&(e.generateMipmap=!0,t.setMinificationFilter(se.LINEAR_MIPMAP_LINEAR)),C.length%6===0?t.createCubeFromRaw(
{width:g[1]-g[0]+1,height:g[3]-g[2]+1,numComps:y.getNumberOfComponents(),dataType:y.getDataType(),data:C}):t.create2DFromRaw(
{width:g[1]-g[0]+1,height:g[3]-g[2]+1,numComps:y.getNumberOfComponents(),dataType:y.getDataType(),data:y.getData()}),t.activate(),
t.sendParameters(),e.textureBuildTime.modified()}}e.handle&&t.activate()};let n=()=>{if(!((e.minificationFilter===se.LINEAR||
e.magnificationFilter===se.LINEAR)&&!Gf()))return e.oglNorm16Ext};t.destroyTexture=()=>{t.deactivate(),e.context&&e.handle&&
e.context.deleteTexture(e.handle),e._prevTexParams=null,e.handle=0,e.numberOfDimensions=0,e.target=0,e.components=0,e.width=
0,e.height=0,e.depth=0,t.resetFormatAndType()},t.createTexture=()=>{e.handle||(e.handle=e.context.createTexture(),e.target&&
(e.context.bindTexture(e.target,e.handle),e.context.texParameteri(e.target,e.context.TEXTURE_MIN_FILTER,t.getOpenGLFilterMode(
e.minificationFilter)),e.context.texParameteri(e.target,e.context.TEXTURE_MAG_FILTER,t.getOpenGLFilterMode(e.magnificationFilter)),
e.context.texParameteri(e.target,e.context.TEXTURE_WRAP_S,t.getOpenGLWrapMode(e.wrapS)),e.context.texParameteri(e.target,
e.context.TEXTURE_WRAP_T,t.getOpenGLWrapMode(e.wrapT)),e.context.texParameteri(e.target,e.context.TEXTURE_WRAP_R,t.getOpenGLWrapMode(
e.wrapR)),e.context.bindTexture(e.target,null)))},t.getTextureUnit=()=>e._openGLRenderWindow?e._openGLRenderWindow.getTextureUnitForTexture(
t):-1,t.activate=()=>{e._openGLRenderWindow.activateTexture(t),t.bind()},t.deactivate=()=>{e._openGLRenderWindow&&e._openGLRenderWindow.
deactivateTexture(t)},t.releaseGraphicsResources=p=>{p&&e.handle&&(p.activateTexture(t),p.deactivateTexture(t),e.context.
deleteTexture(e.handle),e._prevTexParams=null,e.handle=0,e.numberOfDimensions=0,e.target=0,e.internalFormat=0,e.format=0,
e.openGLDataType=0,e.components=0,e.width=0,e.height=0,e.depth=0,e.allocatedGPUMemoryInBytes=0),e.shaderProgram&&(e.shaderProgram.
releaseGraphicsResources(p),e.shaderProgram=null)},t.bind=()=>{e.context.bindTexture(e.target,e.handle),e.autoParameters&&
t.getMTime()>e.sendParametersTime.getMTime()&&t.sendParameters()},t.isBound=()=>{let p=!1;if(e.context&&e.handle){let x=0;
e.target===e.context.TEXTURE_2D?x=e.context.TEXTURE_BINDING_2D:kf("impossible case"),p=e.context.getIntegerv(x)===e.handle}
return p},t.sendParameters=()=>{e.context.texParameteri(e.target,e.context.TEXTURE_WRAP_S,t.getOpenGLWrapMode(e.wrapS)),
e.context.texParameteri(e.target,e.context.TEXTURE_WRAP_T,t.getOpenGLWrapMode(e.wrapT)),e.context.texParameteri(e.target,
e.context.TEXTURE_WRAP_R,t.getOpenGLWrapMode(e.wrapR)),e.context.texParameteri(e.target,e.context.TEXTURE_MIN_FILTER,t.getOpenGLFilterMode(
e.minificationFilter)),e.context.texParameteri(e.target,e.context.TEXTURE_MAG_FILTER,t.getOpenGLFilterMode(e.magnificationFilter)),
e.context.texParameteri(e.target,e.context.TEXTURE_BASE_LEVEL,e.baseLevel),e.context.texParameteri(e.target,e.context.TEXTURE_MAX_LEVEL,
e.maxLevel),e.sendParametersTime.modified()},t.getInternalFormat=(p,x)=>(e._forceInternalFormat||(e.internalFormat=t.getDefaultInternalFormat(
p,x)),e.internalFormat||Ya(`Unable to find suitable internal format for T=${p} NC= ${x}`),[e.context.R32F,e.context.RG32F,
e.context.RGB32F,e.context.RGBA32F].includes(e.internalFormat)&&!e.context.getExtension("OES_texture_float_linear")&&kf(
"Failed to load OES_texture_float_linear. Texture filtering is not available for *32F internal formats."),e.internalFormat),
t.getDefaultInternalFormat=(p,x)=>{let g=0;return g=e._openGLRenderWindow.getDefaultTextureInternalFormat(p,x,n(),t.useHalfFloat()),
g||(g||(Ya("Unsupported internal texture type!"),Ya(`Unable to find suitable internal format for T=${p} NC= ${x}`)),g)},
t.useHalfFloat=()=>e.enableUseHalfFloat&&e.canUseHalfFloat,t.setInternalFormat=p=>{e._forceInternalFormat=!0,p!==e.internalFormat&&
(e.internalFormat=p,t.modified())},t.getFormat=(p,x)=>(e.format=t.getDefaultFormat(p,x),e.format),t.getDefaultFormat=(p,x)=>{
switch(x){case 1:return e.context.RED;case 2:return e.context.RG;case 3:return e.context.RGB;case 4:return e.context.RGBA;default:
return e.context.RGB}},t.resetFormatAndType=()=>{e._prevTexParams=null,e.format=0,e.internalFormat=0,e._forceInternalFormat=
!1,e.openGLDataType=0},t.getDefaultDataType=p=>{let x=t.useHalfFloat();switch(p){case $.UNSIGNED_CHAR:return e.context.UNSIGNED_BYTE;case(n()&&
!x&&$.SHORT):return e.context.SHORT;case(n()&&!x&&$.UNSIGNED_SHORT):return e.context.UNSIGNED_SHORT;case(x&&$.SHORT):case(x&&
$.UNSIGNED_SHORT):return e.context.HALF_FLOAT;case $.FLOAT:case $.VOID:default:return e.context.FLOAT}},t.getOpenGLDataType=
(p,x=!1)=>((!e.openGLDataType||x)&&(e.openGLDataType=t.getDefaultDataType(p)),e.openGLDataType),t.getShiftAndScale=()=>{
let p=0,x=1;switch(e.openGLDataType){case e.context.BYTE:x=127.5,p=x-128;break;case e.context.UNSIGNED_BYTE:x=255,p=0;break;case e.
context.SHORT:x=32767.5,p=x-32768;break;case e.context.UNSIGNED_SHORT:x=65536,p=0;break;case e.context.INT:x=21474836475e-1,
p=x-2147483648;break;case e.context.UNSIGNED_INT:x=4294967295,p=0;break;case e.context.FLOAT:default:break}return{shift:p,
scale:x}},t.getOpenGLFilterMode=p=>{switch(p){case se.NEAREST:return e.context.NEAREST;case se.LINEAR:return e.context.LINEAR;case se.
NEAREST_MIPMAP_NEAREST:return e.context.NEAREST_MIPMAP_NEAREST;case se.NEAREST_MIPMAP_LINEAR:return e.context.NEAREST_MIPMAP_LINEAR;case se.
LINEAR_MIPMAP_NEAREST:return e.context.LINEAR_MIPMAP_NEAREST;case se.LINEAR_MIPMAP_LINEAR:return e.context.LINEAR_MIPMAP_LINEAR;default:
return e.context.NEAREST}},t.getOpenGLWrapMode=p=>{switch(p){case We.CLAMP_TO_EDGE:return e.context.CLAMP_TO_EDGE;case We.
REPEAT:return e.context.REPEAT;case We.MIRRORED_REPEAT:return e.context.MIRRORED_REPEAT;default:return e.context.CLAMP_TO_EDGE}};
function a(p){let[x,g,y,C,M,v]=p;return[g-x+1,C-y+1,v-M+1]}function s(p){let[x,g,y]=a(p);return x*g*y}function i(p,x,g,y,C){
let[M,v,T,S,d,R]=g,[w,L]=x,O=w*L,D=C;for(let m=d;m<=R;m++){let V=m*O;for(let F=T;F<=S;F++){let G=V+F*w;for(let B=G+M,A=G+
v;B<=A;B++,D++)y[D]=p[B]}}}function o(p,x,g=null){let y=new(g||p.constructor)(x.reduce((v,T)=>v+s(T),0)),C=[e.width,e.height,
e.depth],M=0;return x.forEach(v=>{i(p,C,v,y,M),M+=s(v)}),y}t.updateArrayDataTypeForGL=(p,x,g=!1,y=[])=>{let C=[],M=e.width*
e.height*e.components;g&&(M*=e.depth);let v=!!y.length;if(p!==$.FLOAT&&e.openGLDataType===e.context.FLOAT)for(let T=0;T<
x.length;T++)if(x[T])if(v)C.push(o(x[T],y,Float32Array));else{let S=x[T].length>M?x[T].subarray(0,M):x[T];C.push(new Float32Array(
S))}else C.push(null);if(p!==$.UNSIGNED_CHAR&&e.openGLDataType===e.context.UNSIGNED_BYTE)for(let T=0;T<x.length;T++)if(x[T])
if(v)C.push(o(x[T],y,Uint8Array));else{let S=x[T].length>M?x[T].subarray(0,M):x[T];C.push(new Uint8Array(S))}else C.push(
null);if(e.openGLDataType===e.context.HALF_FLOAT)for(let T=0;T<x.length;T++)if(x[T]){let S=v?o(x[T],y):x[T],d=new Uint16Array(
v?S.length:M),R=d.length;for(let w=0;w<R;w++)d[w]=ET(S[w]);C.push(d)}else C.push(null);if(C.length===0)for(let T=0;T<x.length;T++)
C.push(v&&x[T]?o(x[T],y):x[T]);return C};function f(p){return e._openGLRenderWindow?!(e.resizable||e.renderable?.getResizable()||
e._openGLRenderWindow.getGLInformations().RENDERER.value.match(/WebKit/gi)&&navigator.platform.match(/Mac/gi)&&n()&&(p===
$.UNSIGNED_SHORT||p===$.SHORT)):!1}t.create2DFromRaw=({width:p=j("width"),height:x=j("height"),numComps:g=j("numComps"),
dataType:y=j("dataType"),data:C=j("data"),flip:M=!1}={})=>{if(t.getOpenGLDataType(y,!0),t.getInternalFormat(y,g),t.getFormat(
y,g),!e.internalFormat||!e.format||!e.openGLDataType)return Mt("Failed to determine texture parameters."),!1;e.target=e.
context.TEXTURE_2D,e.components=g,e.width=p,e.height=x,e.depth=1,e.numberOfDimensions=2,e._openGLRenderWindow.activateTexture(
t),t.createTexture(),t.bind();let v=[C],T=t.updateArrayDataTypeForGL(y,v);return e.context.pixelStorei(e.context.UNPACK_FLIP_Y_WEBGL,
M),e.context.pixelStorei(e.context.UNPACK_ALIGNMENT,1),f(y)?(e.context.texStorage2D(e.target,1,e.internalFormat,e.width,
e.height),T[0]!=null&&e.context.texSubImage2D(e.target,0,0,0,e.width,e.height,e.format,e.openGLDataType,T[0])):e.context.
texImage2D(e.target,0,e.internalFormat,e.width,e.height,0,e.format,e.openGLDataType,T[0]),e.generateMipmap&&e.context.generateMipmap(
e.target),M&&e.context.pixelStorei(e.context.UNPACK_FLIP_Y_WEBGL,!1),e.allocatedGPUMemoryInBytes=e.width*e.height*e.depth*
g*e._openGLRenderWindow.getDefaultTextureByteSize(y,n(),t.useHalfFloat()),t.deactivate(),!0},t.createCubeFromRaw=({width:p=j(
"width"),height:x=j("height"),numComps:g=j("numComps"),dataType:y=j("dataType"),data:C=j("data")}={})=>{if(t.getOpenGLDataType(
y),t.getInternalFormat(y,g),t.getFormat(y,g),!e.internalFormat||!e.format||!e.openGLDataType)return Mt("Failed to determ\
ine texture parameters."),!1;e.target=e.context.TEXTURE_CUBE_MAP,e.components=g,e.width=p,e.height=x,e.depth=1,e.numberOfDimensions=
2,e._openGLRenderWindow.activateTexture(t),e.maxLevel=C.length/6-1,t.createTexture(),t.bind();let M=t.updateArrayDataTypeForGL(
y,C),v=[],T=e.width,S=e.height;for(let d=0;d<M.length;d++){d%6===0&&d!==0&&(T/=2,S/=2),v[d]=yr(y,S*T*e.components);for(let R=0;R<
S;++R){let w=R*T*e.components,L=(S-R-1)*T*e.components;v[d].set(M[d].slice(L,L+T*e.components),w)}}e.context.pixelStorei(
e.context.UNPACK_ALIGNMENT,1),f(y)&&e.context.texStorage2D(e.target,6,e.internalFormat,e.width,e.height);for(let d=0;d<6;d++){
let R=0,w=e.width,L=e.height;for(;w>=1&&L>=1;){let O=null;R<=e.maxLevel&&(O=v[6*R+d]),f(y)?O!=null&&e.context.texSubImage2D(
e.context.TEXTURE_CUBE_MAP_POSITIVE_X+d,R,0,0,w,L,e.format,e.openGLDataType,O):e.context.texImage2D(e.context.TEXTURE_CUBE_MAP_POSITIVE_X+
d,R,e.internalFormat,w,L,0,e.format,e.openGLDataType,O),R++,w/=2,L/=2}}return e.allocatedGPUMemoryInBytes=e.width*e.height*
e.depth*g*e._openGLRenderWindow.getDefaultTextureByteSize(y,n(),t.useHalfFloat()),t.deactivate(),!0},t.createDepthFromRaw=
({width:p=j("width"),height:x=j("height"),dataType:g=j("dataType"),data:y=j("data")}={})=>(t.getOpenGLDataType(g),e.format=
e.context.DEPTH_COMPONENT,g===$.FLOAT?e.internalFormat=e.context.DEPTH_COMPONENT32F:e.internalFormat=e.context.DEPTH_COMPONENT16,
!e.internalFormat||!e.format||!e.openGLDataType?(Mt("Failed to determine texture parameters."),!1):(e.target=e.context.TEXTURE_2D,
e.components=1,e.width=p,e.height=x,e.depth=1,e.numberOfDimensions=2,e._openGLRenderWindow.activateTexture(t),t.createTexture(),
t.bind(),e.context.pixelStorei(e.context.UNPACK_ALIGNMENT,1),f(g)?(e.context.texStorage2D(e.target,1,e.internalFormat,e.
width,e.height),y!=null&&e.context.texSubImage2D(e.target,0,0,0,e.width,e.height,e.format,e.openGLDataType,y)):e.context.
texImage2D(e.target,0,e.internalFormat,e.width,e.height,0,e.format,e.openGLDataType,y),e.generateMipmap&&e.context.generateMipmap(
e.target),e.allocatedGPUMemoryInBytes=e.width*e.height*e.depth*e.components*e._openGLRenderWindow.getDefaultTextureByteSize(
g,n(),t.useHalfFloat()),t.deactivate(),!0)),t.create2DFromImage=p=>{if(t.getOpenGLDataType($.UNSIGNED_CHAR),t.getInternalFormat(
$.UNSIGNED_CHAR,4),t.getFormat($.UNSIGNED_CHAR,4),!e.internalFormat||!e.format||!e.openGLDataType)return Mt("Failed to d\
etermine texture parameters."),!1;e.target=e.context.TEXTURE_2D,e.components=4,e.depth=1,e.numberOfDimensions=2,e._openGLRenderWindow.
activateTexture(t),t.createTexture(),t.bind();let x=p,g=p.width,y=p.height,C=!0;if(window.chrome){let M=new OffscreenCanvas(
kt(p.width),kt(p.height));g=M.width,y=M.height;let v=M.getContext("2d");v.translate(0,M.height),v.scale(1,-1),v.drawImage(
p,0,0,p.width,p.height,0,0,M.width,M.height),x=M,C=!1}return e.width=g,e.height=y,e.context.pixelStorei(e.context.UNPACK_FLIP_Y_WEBGL,
C),e.context.pixelStorei(e.context.UNPACK_ALIGNMENT,1),f($.UNSIGNED_CHAR)?(e.context.texStorage2D(e.target,1,e.internalFormat,
e.width,e.height),e.context.texSubImage2D(e.target,0,0,0,e.width,e.height,e.format,e.openGLDataType,x)):e.context.texImage2D(
e.target,0,e.internalFormat,e.width,e.height,0,e.format,e.openGLDataType,x),e.generateMipmap&&e.context.generateMipmap(e.
target),e.allocatedGPUMemoryInBytes=e.width*e.height*e.depth*e.components*e._openGLRenderWindow.getDefaultTextureByteSize(
$.UNSIGNED_CHAR,n(),t.useHalfFloat()),t.deactivate(),!0},t.create2DFromImageBitmap=p=>(t.getOpenGLDataType($.UNSIGNED_CHAR),
t.getInternalFormat($.UNSIGNED_CHAR,4),t.getFormat($.UNSIGNED_CHAR,4),!e.internalFormat||!e.format||!e.openGLDataType?(Mt(
"Failed to determine texture parameters."),!1):(e.target=e.context.TEXTURE_2D,e.components=4,e.depth=1,e.numberOfDimensions=
2,e._openGLRenderWindow.activateTexture(t),t.createTexture(),t.bind(),e.context.pixelStorei(e.context.UNPACK_ALIGNMENT,1),
e.width=p.width,e.height=p.height,f($.UNSIGNED_CHAR)?(e.context.texStorage2D(e.target,1,e.internalFormat,e.width,e.height),
e.context.texSubImage2D(e.target,0,0,0,e.width,e.height,e.format,e.openGLDataType,p)):e.context.texImage2D(e.target,0,e.
internalFormat,e.width,e.height,0,e.format,e.openGLDataType,p),e.generateMipmap&&e.context.generateMipmap(e.target),e.allocatedGPUMemoryInBytes=
e.width*e.height*e.depth*e.components*e._openGLRenderWindow.getDefaultTextureByteSize($.UNSIGNED_CHAR,n(),t.useHalfFloat()),
t.deactivate(),!0));function c(p,x,g){let y=new Array(g),C=new Array(g);for(let M=0;M<g;++M)y[M]=p[M],C[M]=x[M]-p[M]||1;
return{scale:C,offset:y}}function u(p,x){for(let g=0;g<p.length;g++){let y=p[g],C=x[g]+y;if(y<-2048||y>2048||C<-2048||C>
2048)return!1}return!0}function h(p,x,g,y){t.getOpenGLDataType(p);let C=u(x,g)||y;e.canUseHalfFloat=(e.openGLDataType===
e.context.FLOAT&&e.context.getExtension("OES_texture_float_linear")===null&&C||e.openGLDataType===e.context.HALF_FLOAT)&&
C}function l(p,x){let g=p.getNumberOfComponents(),y=p.getDataType(),C=p.getData(),M=new Array(g),v=new Array(g);for(let S=0;S<
g;++S){let[d,R]=p.getRange(S);M[S]=d,v[S]=R}let T=c(M,v,g);return h(y,T.offset,T.scale,x),t.useHalfFloat()||t.getOpenGLDataType(
y,!0),{numComps:g,dataType:y,data:C,scaleOffsets:T}}t.create2DFilterableFromRaw=({width:p=j("width"),height:x=j("height"),
numComps:g=j("numComps"),dataType:y=j("dataType"),data:C=j("data"),preferSizeOverAccuracy:M=!1,ranges:v=void 0}={})=>t.create2DFilterableFromDataArray(
{width:p,height:x,dataArray:Y.newInstance({numberOfComponents:g,dataType:y,values:C,ranges:v}),preferSizeOverAccuracy:M}),
t.create2DFilterableFromDataArray=({width:p=j("width"),height:x=j("height"),dataArray:g=j("dataArray"),preferSizeOverAccuracy:y=!1}={})=>{
let{numComps:C,dataType:M,data:v}=l(g,y);t.create2DFromRaw({width:p,height:x,numComps:C,dataType:M,data:v})},t.updateVolumeInfoForGL=
(p,x)=>{let g=!1,y=t.useHalfFloat();(!e.volumeInfo?.scale||!e.volumeInfo?.offset)&&(e.volumeInfo={scale:new Array(x),offset:new Array(
x)});for(let C=0;C<x;++C)e.volumeInfo.scale[C]=1,e.volumeInfo.offset[C]=0;if(n()&&!y&&p===$.SHORT){for(let C=0;C<x;++C)e.
volumeInfo.scale[C]=32767;g=!0}if(n()&&!y&&p===$.UNSIGNED_SHORT){for(let C=0;C<x;++C)e.volumeInfo.scale[C]=65535;g=!0}if(p===
$.UNSIGNED_CHAR){for(let C=0;C<x;++C)e.volumeInfo.scale[C]=255;g=!0}return(p===$.FLOAT||y&&(p===$.SHORT||p===$.UNSIGNED_SHORT))&&
(g=!0),g},t.create3DFromRaw=({width:p=j("width"),height:x=j("height"),depth:g=j("depth"),numComps:y=j("numComps"),dataType:C=j(
"dataType"),data:M=j("data"),updatedExtents:v=[]}={})=>{let T=C,S=M;if(!t.updateVolumeInfoForGL(T,y)&&S){let O=p*x*g,D=structuredClone(
e.volumeInfo),m=new Float32Array(O*y);e.volumeInfo.offset=D.offset,e.volumeInfo.scale=D.scale;let V=0,F=D.scale.map(G=>1/
G);for(let G=0;G<O;G++)for(let B=0;B<y;B++)m[V]=(S[V]-D.offset[B])*F[B],V++;T=$.FLOAT,S=m}if(t.getOpenGLDataType(T),t.getInternalFormat(
T,y),t.getFormat(T,y),!e.internalFormat||!e.format||!e.openGLDataType)return Mt("Failed to determine texture parameters."),
!1;e.target=e.context.TEXTURE_3D,e.components=y,e.width=p,e.height=x,e.depth=g,e.numberOfDimensions=3,e._openGLRenderWindow.
activateTexture(t),t.createTexture(),t.bind();let d=v.length>0,R=!d||!(0,zf.default)(e._prevTexParams,r()),w=[S],L=t.updateArrayDataTypeForGL(
T,w,!0,R?[]:v);if(e.context.pixelStorei(e.context.UNPACK_ALIGNMENT,1),R)f(T)?(e.context.texStorage3D(e.target,1,e.internalFormat,
e.width,e.height,e.depth),L[0]!=null&&e.context.texSubImage3D(e.target,0,0,0,0,e.width,e.height,e.depth,e.format,e.openGLDataType,
L[0])):e.context.texImage3D(e.target,0,e.internalFormat,e.width,e.height,e.depth,0,e.format,e.openGLDataType,L[0]),e._prevTexParams=
r();else if(d){let O=L[0],D=0;for(let m=0;m<v.length;m++){let V=v[m],F=a(V),G=s(V),B=new O.constructor(O.buffer,D,G);D+=
B.byteLength,e.context.texSubImage3D(e.target,0,V[0],V[2],V[4],F[0],F[1],F[2],e.format,e.openGLDataType,B)}}return e.generateMipmap&&
e.context.generateMipmap(e.target),e.allocatedGPUMemoryInBytes=e.width*e.height*e.depth*e.components*e._openGLRenderWindow.
getDefaultTextureByteSize(T,n(),t.useHalfFloat()),t.deactivate(),!0},t.create3DFilterableFromRaw=({width:p=j("width"),height:x=j(
"height"),depth:g=j("depth"),numComps:y=j("numComps"),dataType:C=j("dataType"),data:M=j("data"),preferSizeOverAccuracy:v=!1,
ranges:T=void 0,updatedExtents:S=[]}={})=>t.create3DFilterableFromDataArray({width:p,height:x,depth:g,dataArray:Y.newInstance(
{numberOfComponents:y,dataType:C,values:M,ranges:T}),preferSizeOverAccuracy:v,updatedExtents:S}),t.create3DFilterableFromDataArray=
({width:p=j("width"),height:x=j("height"),depth:g=j("depth"),dataArray:y=j("dataArray"),preferSizeOverAccuracy:C=!1,updatedExtents:M=[]}={})=>{
let{numComps:v,dataType:T,data:S,scaleOffsets:d}=l(y,C),R=[],w=[];for(let L=0;L<v;++L)R[L]=0,w[L]=1;return e.volumeInfo=
{scale:w,offset:R,dataComputedScale:d.scale,dataComputedOffset:d.offset,width:p,height:x,depth:g},t.create3DFromRaw({width:p,
height:x,depth:g,numComps:v,dataType:T,data:S,updatedExtents:M})},t.setOpenGLRenderWindow=p=>{e._openGLRenderWindow!==p&&
(t.releaseGraphicsResources(),e._openGLRenderWindow=p,e.context=null,p&&(e.context=e._openGLRenderWindow.getContext()))},
t.getMaximumTextureSize=p=>p&&p.isCurrent()?p.getIntegerv(p.MAX_TEXTURE_SIZE):-1,t.enableUseHalfFloat=p=>{e.enableUseHalfFloat=
p}}var wT={_openGLRenderWindow:null,_forceInternalFormat:!1,_prevTexParams:null,context:null,handle:0,sendParametersTime:null,
textureBuildTime:null,numberOfDimensions:0,target:0,format:0,openGLDataType:0,components:0,width:0,height:0,depth:0,autoParameters:!0,
wrapS:We.CLAMP_TO_EDGE,wrapT:We.CLAMP_TO_EDGE,wrapR:We.CLAMP_TO_EDGE,minificationFilter:se.NEAREST,magnificationFilter:se.
NEAREST,minLOD:-1e3,maxLOD:1e3,baseLevel:0,maxLevel:1e3,generateMipmap:!1,oglNorm16Ext:null,allocatedGPUMemoryInBytes:0,
enableUseHalfFloat:!0,canUseHalfFloat:!1};function Hf(t,e,r={}){Object.assign(e,wT,r),we.extend(t,e,r),e.sendParametersTime=
{},xe(e.sendParametersTime,{mtime:0}),e.textureBuildTime={},xe(e.textureBuildTime,{mtime:0}),Ft(t,e,["format","openGLDat\
aType"]),Te(t,e,["keyMatrixTime","minificationFilter","magnificationFilter","wrapS","wrapT","wrapR","generateMipmap","og\
lNorm16Ext"]),Se(t,e,["width","height","volumeInfo","components","handle","target","allocatedGPUMemoryInBytes"]),Ye(t,e,
["openGLRenderWindow"]),RT(t,e)}var Wf=pe(Hf,"vtkOpenGLTexture"),Ae={newInstance:Wf,extend:Hf,...$a};Oe("vtkTexture",Wf);var{vtkErrorMacro:OT}=E;function LT(t,e){e.classHierarchy.push("vtkShader"),t.compile=()=>{let r=e.context.VERTEX_SHADER;
if(!e.source||!e.source.length||e.shaderType==="Unknown")return!1;if(e.handle!==0&&(e.context.deleteShader(e.handle),e.handle=
0),e.shaderType==="Fragment"?r=e.context.FRAGMENT_SHADER:r=e.context.VERTEX_SHADER,e.handle=e.context.createShader(r),e.
context.shaderSource(e.handle,e.source),e.context.compileShader(e.handle),!e.context.getShaderParameter(e.handle,e.context.
COMPILE_STATUS)){let n=e.context.getShaderInfoLog(e.handle);return OT(`Error compiling shader '${e.source}': ${n}`),e.context.
deleteShader(e.handle),e.handle=0,!1}return!0},t.cleanup=()=>{e.shaderType==="Unknown"||e.handle===0||(e.context.deleteShader(
e.handle),e.handle=0,e.dirty=!0)}}var DT={shaderType:"Unknown",source:"",error:"",handle:0,dirty:!1,context:null};function Af(t,e,r={}){
Object.assign(e,DT,r),E.obj(t,e),E.setGet(t,e,["shaderType","source","error","handle","context"]),LT(t,e)}var _T=E.newInstance(
Af,"vtkShader"),rn={newInstance:_T,extend:Af};var{vtkErrorMacro:Be}=E;function mT(t,e,r,n){let a=typeof r=="string"?r:r.join(`
`),s=n===!1?e:new RegExp(e,"g"),i=t.replace(s,a);return{replace:i!==a,result:i}}function FT(t,e){e.classHierarchy.push("\
vtkShaderProgram"),t.compileShader=()=>e.vertexShader.compile()?e.fragmentShader.compile()?!t.attachShader(e.vertexShader)||
!t.attachShader(e.fragmentShader)?(Be(e.error),0):t.link()?(t.setCompiled(!0),1):(Be(`Links failed: ${e.error}`),0):(Be(
e.fragmentShader.getSource().split(`
`).map((r,n)=>`${n}: ${r}`).join(`
`)),Be(e.fragmentShader.getError()),0):(Be(e.vertexShader.getSource().split(`
`).map((r,n)=>`${n}: ${r}`).join(`
`)),Be(e.vertexShader.getError()),0),t.cleanup=()=>{e.shaderType==="Unknown"||e.handle===0||(t.release(),e.vertexShaderHandle!==
0&&(e.context.detachShader(e.handle,e.vertexShaderHandle),e.vertexShaderHandle=0),e.fragmentShaderHandle!==0&&(e.context.
detachShader(e.handle,e.fragmentShaderHandle),e.fragmentShaderHandle=0),e.context.deleteProgram(e.handle),e.handle=0,t.setCompiled(
!1))},t.bind=()=>!e.linked&&!t.link()?!1:(e.context.useProgram(e.handle),t.setBound(!0),!0),t.isBound=()=>!!e.bound,t.release=
()=>{e.context.useProgram(null),t.setBound(!1)},t.setContext=r=>{e.vertexShader.setContext(r),e.fragmentShader.setContext(
r),e.geometryShader.setContext(r)},t.link=()=>e.linked?!0:e.handle===0?(e.error="Program has not been initialized, and/o\
r does not have shaders.",!1):(e.uniformLocs={},e.context.linkProgram(e.handle),e.context.getProgramParameter(e.handle,e.
context.LINK_STATUS)?(t.setLinked(!0),e.attributeLocs={},!0):(Be(`Error linking shader ${e.context.getProgramInfoLog(e.handle)}`),
e.handle=0,!1)),t.setUniformMatrix=(r,n)=>{let a=t.findUniform(r);if(a===-1)return e.error=`Could not set uniform ${r} .\
 No such uniform.`,!1;let s=new Float32Array(n);return e.context.uniformMatrix4fv(a,!1,s),!0},t.setUniformMatrix3x3=(r,n)=>{
let a=t.findUniform(r);if(a===-1)return e.error=`Could not set uniform ${r} . No such uniform.`,!1;let s=new Float32Array(
n);return e.context.uniformMatrix3fv(a,!1,s),!0},t.setUniformf=(r,n)=>{let a=t.findUniform(r);return a===-1?(e.error=`Co\
uld not set uniform ${r} . No such uniform.`,!1):(e.context.uniform1f(a,n),!0)},t.setUniformfv=(r,n)=>{let a=t.findUniform(
r);return a===-1?(e.error=`Could not set uniform ${r} . No such uniform.`,!1):(e.context.uniform1fv(a,n),!0)},t.setUniformi=
(r,n)=>{let a=t.findUniform(r);return a===-1?(e.error=`Could not set uniform ${r} . No such uniform.`,!1):(e.context.uniform1i(
a,n),!0)},t.setUniformiv=(r,n)=>{let a=t.findUniform(r);return a===-1?(e.error=`Could not set uniform ${r} . No such uni\
form.`,!1):(e.context.uniform1iv(a,n),!0)},t.setUniform2f=(r,n,a)=>{let s=t.findUniform(r);if(s===-1)return e.error=`Cou\
ld not set uniform ${r} . No such uniform.`,!1;if(a===void 0)throw new RangeError("Invalid number of values for array");
return e.context.uniform2f(s,n,a),!0},t.setUniform2fv=(r,n)=>{let a=t.findUniform(r);return a===-1?(e.error=`Could not s\
et uniform ${r} . No such uniform.`,!1):(e.context.uniform2fv(a,n),!0)},t.setUniform2i=(r,n,a)=>{let s=t.findUniform(r);
if(s===-1)return e.error=`Could not set uniform ${r} . No such uniform.`,!1;if(a===void 0)throw new RangeError("Invalid \
number of values for array");return e.context.uniform2i(s,n,a),!0},t.setUniform2iv=(r,n)=>{let a=t.findUniform(r);return a===
-1?(e.error=`Could not set uniform ${r} . No such uniform.`,!1):(e.context.uniform2iv(a,n),!0)},t.setUniform3f=(r,n,a,s)=>{
let i=t.findUniform(r);if(i===-1)return e.error=`Could not set uniform ${r} . No such uniform.`,!1;if(s===void 0)throw new RangeError(
"Invalid number of values for array");return e.context.uniform3f(i,n,a,s),!0},t.setUniform3fArray=(r,n)=>{let a=t.findUniform(
r);if(a===-1)return e.error=`Could not set uniform ${r} . No such uniform.`,!1;if(!Array.isArray(n)||n.length!==3)throw new RangeError(
"Invalid number of values for array");return e.context.uniform3f(a,n[0],n[1],n[2]),!0},t.setUniform3fv=(r,n)=>{let a=t.findUniform(
r);return a===-1?(e.error=`Could not set uniform ${r} . No such uniform.`,!1):(e.context.uniform3fv(a,n),!0)},t.setUniform3i=
(r,...n)=>{let a=t.findUniform(r);if(a===-1)return e.error=`Could not set uniform ${r} . No such uniform.`,!1;let s=n;if(s.
length===1&&Array.isArray(s[0])&&(s=s[0]),s.length!==3)throw new RangeError("Invalid number of values for array");return e.
context.uniform3i(a,s[0],s[1],s[2]),!0},t.setUniform3iv=(r,n)=>{let a=t.findUniform(r);return a===-1?(e.error=`Could not\
 set uniform ${r} . No such uniform.`,!1):(e.context.uniform3iv(a,n),!0)},t.setUniform4f=(r,...n)=>{let a=t.findUniform(
r);if(a===-1)return e.error=`Could not set uniform ${r} . No such uniform.`,!1;let s=n;if(s.length===1&&Array.isArray(s[0])&&
(s=s[0]),s.length!==4)throw new RangeError("Invalid number of values for array");return e.context.uniform4f(a,s[0],s[1],
s[2],s[3]),!0},t.setUniform4fv=(r,n)=>{let a=t.findUniform(r);return a===-1?(e.error=`Could not set uniform ${r} . No su\
ch uniform.`,!1):(e.context.uniform4fv(a,n),!0)},t.setUniform4i=(r,...n)=>{let a=t.findUniform(r);if(a===-1)return e.error=
`Could not set uniform ${r} . No such uniform.`,!1;let s=n;if(s.length===1&&Array.isArray(s[0])&&(s=s[0]),s.length!==4)throw new RangeError(
"Invalid number of values for array");return e.context.uniform4i(a,s[0],s[1],s[2],s[3]),!0},t.setUniform4iv=(r,n)=>{let a=t.
findUniform(r);return a===-1?(e.error=`Could not set uniform ${r} . No such uniform.`,!1):(e.context.uniform4iv(a,n),!0)},
t.findUniform=r=>{if(!r||!e.linked)return-1;let n=e.uniformLocs[r];return n!==void 0?n:(n=e.context.getUniformLocation(e.
handle,r),n===null?(e.error=`Uniform ${r} not found in current shader program.`,e.uniformLocs[r]=-1,-1):(e.uniformLocs[r]=
n,n))},t.isUniformUsed=r=>{if(!r)return!1;let n=e.uniformLocs[r];return n!==void 0?n!==null:e.linked?(n=e.context.getUniformLocation(
e.handle,r),e.uniformLocs[r]=n,n!==null):(Be("attempt to find uniform when the shader program is not linked"),!1)},t.isAttributeUsed=
r=>{if(!r)return!1;if(r in e.attributeLocs)return!0;if(!e.linked)return Be("attempt to find uniform when the shader prog\
ram is not linked"),!1;let n=e.context.getAttribLocation(e.handle,r);return n===-1?!1:(e.attributeLocs[r]=n,!0)},t.attachShader=
r=>{if(r.getHandle()===0)return e.error="Shader object was not initialized, cannot attach it.",!1;if(r.getShaderType()===
"Unknown")return e.error="Shader object is of type Unknown and cannot be used.",!1;if(e.handle===0){let n=e.context.createProgram();
if(n===0)return e.error="Could not create shader program.",!1;e.handle=n,e.linked=!1}return r.getShaderType()==="Vertex"&&
(e.vertexShaderHandle!==0&&e.context.detachShader(e.handle,e.vertexShaderHandle),e.vertexShaderHandle=r.getHandle()),r.getShaderType()===
"Fragment"&&(e.fragmentShaderHandle!==0&&e.context.detachShader(e.handle,e.fragmentShaderHandle),e.fragmentShaderHandle=
r.getHandle()),e.context.attachShader(e.handle,r.getHandle()),t.setLinked(!1),!0},t.detachShader=r=>{if(r.getHandle()===
0)return e.error="shader object was not initialized, cannot attach it.",!1;if(r.getShaderType()==="Unknown")return e.error=
"Shader object is of type Unknown and cannot be used.",!1;switch(e.handle===0&&(e.error="This shader program has not bee\
n initialized yet."),r.getShaderType()){case"Vertex":return e.vertexShaderHandle!==r.getHandle()?(e.error="The supplied \
shader was not attached to this program.",!1):(e.context.detachShader(e.handle,r.getHandle()),e.vertexShaderHandle=0,e.linked=
!1,!0);case"Fragment":return e.fragmentShaderHandle!==r.getHandle()?(e.error="The supplied shader was not attached to th\
is program.",!1):(e.context.detachShader(e.handle,r.getHandle()),e.fragmentShaderHandle=0,e.linked=!1,!0);default:return!1}},
t.setContext=r=>{e.context=r,e.vertexShader.setContext(r),e.fragmentShader.setContext(r),e.geometryShader.setContext(r)},
t.setLastCameraMTime=r=>{e.lastCameraMTime=r}}var NT={vertexShaderHandle:0,fragmentShaderHandle:0,geometryShaderHandle:0,
vertexShader:null,fragmentShader:null,geometryShader:null,linked:!1,bound:!1,compiled:!1,error:"",handle:0,numberOfOutputs:0,
attributesLocs:null,uniformLocs:null,md5Hash:0,context:null,lastCameraMTime:null};function jf(t,e,r={}){Object.assign(e,
NT,r),e.attributesLocs={},e.uniformLocs={},e.vertexShader=rn.newInstance(),e.vertexShader.setShaderType("Vertex"),e.fragmentShader=
rn.newInstance(),e.fragmentShader.setShaderType("Fragment"),e.geometryShader=rn.newInstance(),e.geometryShader.setShaderType(
"Geometry"),E.obj(t,e),E.get(t,e,["lastCameraMTime"]),E.setGet(t,e,["error","handle","compiled","bound","md5Hash","verte\
xShader","fragmentShader","geometryShader","linked"]),FT(t,e)}var N={newInstance:E.newInstance(jf,"vtkShaderProgram"),extend:jf,
substitute:mT};var Ue={ARRAY_BUFFER:0,ELEMENT_ARRAY_BUFFER:1,TEXTURE_BUFFER:2},qa={ObjectType:Ue};var{ObjectType:nn}=qa,VT={};function BT(t,e){e.classHierarchy.push("vtkOpenGLBufferObject");function r(o){switch(o){case nn.
ELEMENT_ARRAY_BUFFER:return e.context.ELEMENT_ARRAY_BUFFER;case nn.TEXTURE_BUFFER:if("TEXTURE_BUFFER"in e.context)return e.
context.TEXTURE_BUFFER;case nn.ARRAY_BUFFER:default:return e.context.ARRAY_BUFFER}}let n=null,a=null,s=!0,i="";t.getType=
()=>n,t.setType=o=>{n=o},t.getHandle=()=>a,t.isReady=()=>s===!1,t.generateBuffer=o=>{let f=r(o);return a===null&&(a=e.context.
createBuffer(),n=o),r(n)===f},t.upload=(o,f)=>t.generateBuffer(f)?(e.context.bindBuffer(r(n),a),e.context.bufferData(r(n),
o,e.context.STATIC_DRAW),e.allocatedGPUMemoryInBytes=o.length*o.BYTES_PER_ELEMENT,s=!1,!0):(i="Trying to upload array bu\
ffer to incompatible buffer.",!1),t.bind=()=>a?(e.context.bindBuffer(r(n),a),!0):!1,t.release=()=>a?(e.context.bindBuffer(
r(n),null),!0):!1,t.releaseGraphicsResources=()=>{a!==null&&(e.context.bindBuffer(r(n),null),e.context.deleteBuffer(a),a=
null,e.allocatedGPUMemoryInBytes=0)},t.setOpenGLRenderWindow=o=>{e._openGLRenderWindow!==o&&(t.releaseGraphicsResources(),
e._openGLRenderWindow=o,e.context=null,o&&(e.context=e._openGLRenderWindow.getContext()))},t.getError=()=>i}var UT={objectType:nn.
ARRAY_BUFFER,context:null,allocatedGPUMemoryInBytes:0};function Kf(t,e,r={}){Object.assign(e,UT,r),E.obj(t,e),E.get(t,e,
["_openGLRenderWindow","allocatedGPUMemoryInBytes"]),E.moveToProtected(t,e,["openGLRenderWindow"]),BT(t,e)}var GT=E.newInstance(
Kf),an={newInstance:GT,extend:Kf,...VT,...qa};function Za(t){let e=0,r=0;for(let a=0;a<3;++a){let s=t.getRange(a),i=s[1]-s[0];e+=i*i;let o=.5*(s[1]+s[0]);r+=o*o}let n=e>
0&&(Math.abs(r)/e>1e6||Math.abs(Math.log10(e))>3||e===0&&r>1e6);if(n){let a=new Float64Array(3),s=new Float64Array(3);for(let i=0;i<
3;++i){let o=t.getRange(i),f=o[1]-o[0];a[i]=.5*(o[1]+o[0]),s[i]=f>0?1/f:1}return{useShiftAndScale:n,coordShift:a,coordScale:s}}
return{useShiftAndScale:n,coordShift:new Float32Array([0,0,0]),coordScale:new Float32Array([1,1,1])}}function $f(t,e){let r=new Float64Array(
3);k.inverse(r,e);let n=new Float64Array(16);return _.fromRotationTranslationScale(n,ae.create(),t,r),n}var{vtkErrorMacro:Xf}=E;function kT(t,e){return t===null||e===null?!1:!(k.exactEquals(t,[0,0,0])&&k.exactEquals(e,[1,1,1]))}
function zT(t){return!t.forceFlatten&&!t.haveCellScalars&&!t.haveCellNormals&&!t.useTCoordsPerCell}var Qa={anythingToPoints(t,e,r,n,a){
for(let s=0;s<t;++s)a(e[r+s],n)},linesToWireframe(t,e,r,n,a){for(let s=0;s<t-1;++s)a(e[r+s],n),a(e[r+s+1],n)},polysToWireframe(t,e,r,n,a){
if(t>2)for(let s=0;s<t;++s)a(e[r+s],n),a(e[r+(s+1)%t],n)},stripsToWireframe(t,e,r,n,a){if(t>2){for(let s=0;s<t-1;++s)a(e[r+
s],n),a(e[r+s+1],n);for(let s=0;s<t-2;s++)a(e[r+s],n),a(e[r+s+2],n)}},polysToSurface(t,e,r,n,a){for(let s=0;s<t-2;s++)a(
e[r],n),a(e[r+s+1],n),a(e[r+s+2],n)},stripsToSurface(t,e,r,n,a){for(let s=0;s<t-2;s++)a(e[r+s],n),a(e[r+s+1+s%2],n),a(e[r+
s+1+(s+1)%2],n)}},Ja={anythingToPoints(t){return t},linesToWireframe(t){return t>1?(t-1)*2:0},polysToWireframe(t){return t>
2?t*2:0},stripsToWireframe(t){return t>2?t*4-6:0},polysToSurface(t){return t>2?(t-2)*3:0},stripsToSurface(t){return t>2?
(t-2)*3:0}};function Yf(t,e){return e===Ze.POINTS||t==="verts"?{build:Qa.anythingToPoints,count:Ja.anythingToPoints}:e===
Ze.WIREFRAME||t==="lines"?{build:Qa[`${t}ToWireframe`],count:Ja[`${t}ToWireframe`]}:{build:Qa[`${t}ToSurface`],count:Ja[`${t}\
ToSurface`]}}function qf(t,e){let r=0;for(let n=0;n<t.length;n+=t[n]+1)r+=e(t[n]);return r}function Zf(t,e,r,n){let a=e;
for(let s=0;s<t.length;s+=t[s]+1)r(t[s],t,s+1,a,n),a++;return a}function HT(t,e,r,n){let a=t.getData(),{build:s,count:i}=Yf(
e,r),o=qf(a,i),f=n.points.getNumberOfPoints()<=65535?new Uint16Array(o):new Uint32Array(o),c=0;return{indices:f,cellCount:Zf(
a,0,s,u=>{f[c++]=u})}}function WT(t,e){e.classHierarchy.push("vtkOpenGLCellArrayBufferObject"),t.setType(Ue.ARRAY_BUFFER),
t.createVBO=(a,s,i,o,f=null)=>{if(!a.getData()||!a.getData().length)return e.elementCount=0,e.indexed=!1,0;e.blockSize=3,
e.vertexOffset=0,e.normalOffset=0,e.tCoordOffset=0,e.tCoordComponents=0,e.colorComponents=0,e.colorOffset=0,e.customData=
[];let c=o.points.getData(),u=null,h=null,l=null,p=o.colors?o.colors.getNumberOfComponents():0,x=o.tcoords?o.tcoords.getNumberOfComponents():
0;o.normals&&(e.normalOffset=4*e.blockSize,e.blockSize+=3,u=o.normals.getData()),o.customAttributes&&o.customAttributes.
forEach(A=>{A&&(e.customData.push({data:A.getData(),offset:4*e.blockSize,components:A.getNumberOfComponents(),name:A.getName()}),
e.blockSize+=A.getNumberOfComponents())}),o.tcoords&&(e.tCoordOffset=4*e.blockSize,e.tCoordComponents=x,e.blockSize+=x,h=
o.tcoords.getData()),o.colors?(e.colorComponents=o.colors.getNumberOfComponents(),e.colorOffset=0,l=o.colors.getData(),e.
colorBO||(e.colorBO=an.newInstance()),e.colorBO.setOpenGLRenderWindow(e._openGLRenderWindow)):e.colorBO=null,e.stride=4*
e.blockSize;let g=0,y=0,C=0,M=0,v=0;if(zT(o)){let{indices:A,cellCount:q}=HT(a,s,i,o);e.indexBO||(e.indexBO=an.newInstance()),
e.indexBO.setOpenGLRenderWindow(e._openGLRenderWindow),e.indexBO.upload(A,Ue.ELEMENT_ARRAY_BUFFER),A instanceof Uint16Array?
e.indexElementType=e.context.UNSIGNED_SHORT:e.indexElementType=e.context.UNSIGNED_INT;let ie=o.points.getNumberOfPoints(),
Z=new Float32Array(ie*e.blockSize),ye=0,{useShiftAndScale:R0,coordShift:w0,coordScale:O0}=Za(o.points);R0?t.setCoordShiftAndScale(
w0,O0):e.coordShiftAndScaleEnabled===!0&&t.setCoordShiftAndScale(null,null);for(let Ce=0;Ce<ie;Ce++)if(g=Ce*3,e.coordShiftAndScaleEnabled?
(Z[ye++]=(c[g++]-e.coordShift[0])*e.coordScale[0],Z[ye++]=(c[g++]-e.coordShift[1])*e.coordScale[1],Z[ye++]=(c[g++]-e.coordShift[2])*
e.coordScale[2]):(Z[ye++]=c[g++],Z[ye++]=c[g++],Z[ye++]=c[g++]),u!==null&&(y=Ce*3,Z[ye++]=u[y++],Z[ye++]=u[y++],Z[ye++]=
u[y++]),e.customData.forEach(Re=>{v=Ce*Re.components;for(let lt=0;lt<Re.components;++lt)Z[ye++]=Re.data[v++]}),h!==null){
C=Ce*x;for(let Re=0;Re<x;++Re)Z[ye++]=h[C++]}if(t.upload(Z,Ue.ARRAY_BUFFER),e.colorBO){let Ce=new Uint8Array(ie*4),Re=0;
for(let lt=0;lt<ie;lt++)M=lt*p,Ce[Re++]=l[M++],Ce[Re++]=l[M++],Ce[Re++]=l[M++],p===4?Ce[Re++]=l[M++]:Ce[Re++]=255;e.colorBOStride=
4,e.colorBO.upload(Ce,Ue.ARRAY_BUFFER)}return e.elementCount=A.length,e.indexed=!0,q}e.indexBO&&e.indexBO.releaseGraphicsResources(),
e.indexed=!1,e.indexElementType=null;let T,{build:S,count:d}=Yf(s,i),R=a.getData(),w=qf(R,d),L=null,O=new Float32Array(w*
e.blockSize);l&&(L=new Uint8Array(w*4));let D=0,m=0,{useShiftAndScale:V,coordShift:F,coordScale:G}=Za(o.points);if(V?t.setCoordShiftAndScale(
F,G):e.coordShiftAndScaleEnabled===!0&&t.setCoordShiftAndScale(null,null),f)if(!f.points&&!f.cells)f.points=new Int32Array(
w),f.cells=new Int32Array(w);else{let A=new Int32Array(w+f.points.length);A.set(f.points),f.points=A;let q=new Int32Array(
w+f.cells.length);q.set(f.cells),f.cells=q}let B=o.vertexOffset;return T=function(q,ie){if(f&&(f.points[B]=q,f.cells[B]=
ie),++B,g=q*3,e.coordShiftAndScaleEnabled?(O[D++]=(c[g++]-e.coordShift[0])*e.coordScale[0],O[D++]=(c[g++]-e.coordShift[1])*
e.coordScale[1],O[D++]=(c[g++]-e.coordShift[2])*e.coordScale[2]):(O[D++]=c[g++],O[D++]=c[g++],O[D++]=c[g++]),u!==null&&(o.
haveCellNormals?y=ie*3:y=q*3,O[D++]=u[y++],O[D++]=u[y++],O[D++]=u[y++]),e.customData.forEach(Z=>{v=q*Z.components;for(let ye=0;ye<
Z.components;++ye)O[D++]=Z.data[v++]}),h!==null){o.useTCoordsPerCell?C=ie*x:C=q*x;for(let Z=0;Z<x;++Z)O[D++]=h[C++]}l!==
null&&(o.haveCellScalars?M=ie*p:M=q*p,L[m++]=l[M++],L[m++]=l[M++],L[m++]=l[M++],L[m++]=p===4?l[M++]:255)},Zf(R,o.cellOffset,
S,T),e.elementCount=w,t.upload(O,Ue.ARRAY_BUFFER),e.colorBO&&(e.colorBOStride=4,e.colorBO.upload(L,Ue.ARRAY_BUFFER)),a.getNumberOfCells()},
t.setCoordShiftAndScale=(a,s)=>{if(a!==null&&(a.constructor!==Float64Array||a.length!==3)){Xf("Wrong type for coordShift\
, expected vec3 or null");return}if(s!==null&&(s.constructor!==Float64Array||s.length!==3)){Xf("Wrong type for coordScal\
e, expected vec3 or null");return}(e.coordShift===null||a===null||!k.equals(a,e.coordShift))&&(e.coordShift=a),(e.coordScale===
null||s===null||!k.equals(s,e.coordScale))&&(e.coordScale=s),e.coordShiftAndScaleEnabled=kT(e.coordShift,e.coordScale),e.
coordShiftAndScaleEnabled?e.inverseShiftAndScaleMatrix=$f(e.coordShift,e.coordScale):e.inverseShiftAndScaleMatrix=null};
let r=t.releaseGraphicsResources;t.releaseGraphicsResources=()=>{r(),e.indexBO&&e.indexBO.releaseGraphicsResources(),e.colorBO&&
e.colorBO.releaseGraphicsResources(),e.indexed=!1};let n=t.getAllocatedGPUMemoryInBytes;t.getAllocatedGPUMemoryInBytes=()=>n()+
(e.indexBO?e.indexBO.getAllocatedGPUMemoryInBytes():0)+(e.colorBO?e.colorBO.getAllocatedGPUMemoryInBytes():0)}var AT={elementCount:0,
indexed:!1,indexBO:null,indexElementType:null,stride:0,colorBOStride:0,vertexOffset:0,normalOffset:0,tCoordOffset:0,tCoordComponents:0,
colorOffset:0,colorComponents:0,tcoordBO:null,customData:[],coordShift:null,coordScale:null,coordShiftAndScaleEnabled:!1,
inverseShiftAndScaleMatrix:null};function Qf(t,e,r={}){Object.assign(e,AT,r),an.extend(t,e,r),E.setGet(t,e,["colorBO","e\
lementCount","stride","colorBOStride","vertexOffset","normalOffset","tCoordOffset","tCoordComponents","colorOffset","col\
orComponents","customData","indexed","indexBO","indexElementType"]),E.get(t,e,["coordShift","coordScale","coordShiftAndS\
caleEnabled","inverseShiftAndScaleMatrix"]),WT(t,e)}var jT=E.newInstance(Qf),Jf={newInstance:jT,extend:Qf};function KT(t,e){e.classHierarchy.push("vtkOpenGLVertexArrayObject"),t.initialize=()=>{e.handleVAO=e.context.createVertexArray()},
t.isReady=()=>e.handleVAO!==0,t.bind=()=>{t.isReady()||t.initialize(),e.context.bindVertexArray(e.handleVAO)},t.release=
()=>{e.context&&e.context.bindVertexArray(null)},t.shaderProgramChanged=()=>{t.release(),e.handleVAO&&e.context&&e.context.
deleteVertexArray(e.handleVAO),e.handleVAO=0,e.handleProgram=0},t.releaseGraphicsResources=()=>{t.shaderProgramChanged(),
e.handleVAO&&e.context&&e.context.deleteVertexArray(e.handleVAO),e.handleVAO=0,e.handleProgram=0},t.addAttributeArray=(r,n,a,s,i,o,f,c)=>t.
addAttributeArrayWithDivisor(r,n,a,s,i,o,f,c,0,!1),t.addAttributeArrayWithDivisor=(r,n,a,s,i,o,f,c,u,h)=>{if(!r||!r.isBound()||
n.getHandle()===0||n.getType()!==Ue.ARRAY_BUFFER||(e.handleProgram===0&&(e.handleProgram=r.getHandle()),t.isReady()||t.initialize(),
!t.isReady()||e.handleProgram!==r.getHandle()))return!1;let l=e.context,p=l.getAttribLocation(e.handleProgram,a);return p===
-1?!1:(n.bind(),l.enableVertexAttribArray(p),l.vertexAttribPointer(p,f,o,c,i,s),u>0&&l.vertexAttribDivisor(p,1),!0)},t.addAttributeMatrixWithDivisor=
(r,n,a,s,i,o,f,c,u)=>{let h=t.addAttributeArrayWithDivisor(r,n,a,s,i,o,f,c,u,!0);if(!h)return h;let l=e.context,p=l.getAttribLocation(
e.handleProgram,a);for(let x=1;x<f;x++)l.enableVertexAttribArray(p+x),l.vertexAttribPointer(p+x,f,o,c,i,s+i*x/f),u>0&&l.
vertexAttribDivisor(p+x,1);return!0},t.removeAttributeArray=r=>!(!t.isReady()||e.handleProgram===0),t.setOpenGLRenderWindow=
r=>{e._openGLRenderWindow!==r&&(t.releaseGraphicsResources(),e._openGLRenderWindow=r,e.context=null,r&&(e.context=e._openGLRenderWindow.
getContext()))}}var $T={handleVAO:0,handleProgram:0,context:null};function If(t,e,r={}){Object.assign(e,$T,r),E.obj(t,e),
KT(t,e)}var XT=E.newInstance(If,"vtkOpenGLVertexArrayObject"),sn={newInstance:XT,extend:If};var Je={Start:0,Points:0,Lines:1,Tris:2,TriStrips:3,TrisEdges:4,TriStripsEdges:5,End:6};function YT(t,e){e.classHierarchy.
push("vtkOpenGLHelper"),t.setOpenGLRenderWindow=r=>{e.context=r.getContext(),e.program.setContext(e.context),e.VAO.setOpenGLRenderWindow(
r),e.CABO.setOpenGLRenderWindow(r)},t.releaseGraphicsResources=r=>{e.VAO.releaseGraphicsResources(),e.CABO.releaseGraphicsResources(),
e.CABO.setElementCount(0)},t.drawArrays=(r,n,a,s)=>{if(e.CABO.getElementCount()){let i=t.getOpenGLMode(a),o=t.haveWideLines(
r,n),f=e.context,c;e.pointPicking&&(c=f.getParameter(f.DEPTH_WRITEMASK),f.depthMask(!1)),i===f.LINES&&o?(t.updateShaders(
r,n,s),e.CABO.getIndexed()?(e.CABO.getIndexBO().bind(),f.drawElementsInstanced(i,e.CABO.getElementCount(),e.CABO.getIndexElementType(),
0,2*Math.ceil(n.getProperty().getLineWidth()))):f.drawArraysInstanced(i,0,e.CABO.getElementCount(),2*Math.ceil(n.getProperty().
getLineWidth()))):(f.lineWidth(n.getProperty().getLineWidth()),t.updateShaders(r,n,s),e.CABO.getIndexed()?(e.CABO.getIndexBO().
bind(),f.drawElements(i,e.CABO.getElementCount(),e.CABO.getIndexElementType(),0)):f.drawArrays(i,0,e.CABO.getElementCount()),
f.lineWidth(1));let u=3;return i===f.POINTS?u=1:i===f.LINES&&(u=2),e.pointPicking&&f.depthMask(c),e.CABO.getElementCount()/
u}return 0},t.getOpenGLMode=r=>{if(e.pointPicking)return e.context.POINTS;let n=e.primitiveType;return r===Ze.POINTS||n===
Je.Points?e.context.POINTS:r===Ze.WIREFRAME||n===Je.Lines||n===Je.TrisEdges||n===Je.TriStripsEdges?e.context.LINES:e.context.
TRIANGLES},t.haveWideLines=(r,n)=>n.getProperty().getLineWidth()>1?!(e.CABO.getOpenGLRenderWindow()&&e.CABO.getOpenGLRenderWindow().
getHardwareMaximumLineWidth()>=n.getProperty().getLineWidth()):!1,t.getNeedToRebuildShaders=(r,n,a)=>!!(a.getNeedToRebuildShaders(
t,r,n)||t.getProgram()===0||t.getShaderSourceTime().getMTime()<a.getMTime()||t.getShaderSourceTime().getMTime()<n.getMTime()),
t.updateShaders=(r,n,a)=>{if(t.getNeedToRebuildShaders(r,n,a)){let s={Vertex:null,Fragment:null,Geometry:null};a.buildShaders(
s,r,n);let i=e.CABO.getOpenGLRenderWindow().getShaderCache().readyShaderProgramArray(s.Vertex,s.Fragment,s.Geometry);i!==
t.getProgram()&&(t.setProgram(i),t.getVAO().releaseGraphicsResources()),t.getShaderSourceTime().modified()}else e.CABO.getOpenGLRenderWindow().
getShaderCache().readyShaderProgram(t.getProgram());t.getVAO().bind(),a.setMapperShaderParameters(t,r,n),a.setPropertyShaderParameters(
t,r,n),a.setCameraShaderParameters(t,r,n),a.setLightingShaderParameters(t,r,n),a.invokeShaderCallbacks(t,r,n)},t.setMapperShaderParameters=
(r,n,a)=>{if(t.haveWideLines(r,n)){t.getProgram().setUniform2f("viewportSize",a.usize,a.vsize);let s=parseFloat(n.getProperty().
getLineWidth()),i=s/2;t.getProgram().setUniformf("lineWidthStepSize",s/Math.ceil(s)),t.getProgram().setUniformf("halfLin\
eWidth",i)}e.primitiveType===Je.Points||n.getProperty().getRepresentation()===Ze.POINTS?t.getProgram().setUniformf("poin\
tSize",n.getProperty().getPointSize()):e.pointPicking&&t.getProgram().setUniformf("pointSize",t.getPointPickingPrimitiveSize())},
t.replaceShaderPositionVC=(r,n,a)=>{let s=r.Vertex;s=N.substitute(s,"//VTK::PositionVC::Dec",["//VTK::PositionVC::Dec","\
uniform float pointSize;"]).result,s=N.substitute(s,"//VTK::PositionVC::Impl",["//VTK::PositionVC::Impl","  gl_PointSize\
 = pointSize;"],!1).result,t.getOpenGLMode(a.getProperty().getRepresentation())===e.context.LINES&&t.haveWideLines(n,a)&&
(s=N.substitute(s,"//VTK::PositionVC::Dec",["//VTK::PositionVC::Dec","uniform vec2 viewportSize;","uniform float lineWid\
thStepSize;","uniform float halfLineWidth;"]).result,s=N.substitute(s,"//VTK::PositionVC::Impl",["//VTK::PositionVC::Imp\
l"," if (halfLineWidth > 0.0)","   {","   float offset = float(gl_InstanceID / 2) * lineWidthStepSize - halfLineWidth;",
"   vec4 tmpPos = gl_Position;","   vec3 tmpPos2 = tmpPos.xyz / tmpPos.w;","   tmpPos2.x = tmpPos2.x + 2.0 * mod(float(g\
l_InstanceID), 2.0) * offset / viewportSize[0];","   tmpPos2.y = tmpPos2.y + 2.0 * mod(float(gl_InstanceID + 1), 2.0) * \
offset / viewportSize[1];","   gl_Position = vec4(tmpPos2.xyz * tmpPos.w, tmpPos.w);","   }"]).result),r.Vertex=s},t.getPointPickingPrimitiveSize=
()=>e.primitiveType===Je.Points?2:e.primitiveType===Je.Lines?4:6,t.getAllocatedGPUMemoryInBytes=()=>t.getCABO().getAllocatedGPUMemoryInBytes()}
var qT={context:null,program:null,shaderSourceTime:null,VAO:null,attributeUpdateTime:null,CABO:null,primitiveType:0,pointPicking:!1};
function Pf(t,e,r={}){Object.assign(e,qT,r),E.obj(t,e),e.shaderSourceTime={},E.obj(e.shaderSourceTime),e.attributeUpdateTime=
{},E.obj(e.attributeUpdateTime),E.setGet(t,e,["program","shaderSourceTime","VAO","attributeUpdateTime","CABO","primitive\
Type","pointPicking"]),e.program=N.newInstance(),e.VAO=sn.newInstance(),e.CABO=Jf.newInstance(),YT(t,e)}var ZT=E.newInstance(
Pf);function bf(t,e,r){e.primitives.forEach(n=>n.releaseGraphicsResources()),e.internalColorTexture?.releaseGraphicsResources(
r??e._openGLRenderWindow),e.VBOBuildString=null,t.modified()}var Qt={newInstance:ZT,extend:Pf,primTypes:Je};var ec=`//VTK::System::Dec

/*=========================================================================

  Program:   Visualization Toolkit
  Module:    vtkPolyDataVS.glsl

  Copyright (c) Ken Martin, Will Schroeder, Bill Lorensen
  All rights reserved.
  See Copyright.txt or http://www.kitware.com/Copyright.htm for details.

     This software is distributed WITHOUT ANY WARRANTY; without even
     the implied warranty of MERCHANTABILITY or FITNESS FOR A PARTICULAR
     PURPOSE.  See the above copyright notice for more information.

=========================================================================*/

attribute vec4 vertexMC;

// frag position in VC
//VTK::PositionVC::Dec

// optional normal declaration
//VTK::Normal::Dec

// extra lighting parameters
//VTK::Light::Dec

// Texture coordinates
//VTK::TCoord::Dec

// material property values
//VTK::Color::Dec

// clipping plane vars
//VTK::Clip::Dec

// camera and actor matrix values
//VTK::Camera::Dec

// Apple Bug
//VTK::PrimID::Dec

// picking support
//VTK::Picking::Dec

void main()
{
  //VTK::Color::Impl

  //VTK::Normal::Impl

  //VTK::TCoord::Impl

  //VTK::Clip::Impl

  //VTK::PrimID::Impl

  //VTK::PositionVC::Impl

  //VTK::Light::Impl

  //VTK::Picking::Impl
}
`;var tc=`//VTK::System::Dec

/*=========================================================================

  Program:   Visualization Toolkit
  Module:    vtkPolyDataFS.glsl

  Copyright (c) Ken Martin, Will Schroeder, Bill Lorensen
  All rights reserved.
  See Copyright.txt or http://www.kitware.com/Copyright.htm for details.

     This software is distributed WITHOUT ANY WARRANTY; without even
     the implied warranty of MERCHANTABILITY or FITNESS FOR A PARTICULAR
     PURPOSE.  See the above copyright notice for more information.

=========================================================================*/
// Template for the polydata mappers fragment shader

uniform int PrimitiveIDOffset;

// VC position of this fragment
//VTK::PositionVC::Dec

// optional color passed in from the vertex shader, vertexColor
//VTK::Color::Dec

// optional surface normal declaration
//VTK::Normal::Dec

// extra lighting parameters
//VTK::Light::Dec

// define vtkImageLabelOutlineOn
//VTK::ImageLabelOutlineOn

// Texture coordinates
//VTK::TCoord::Dec

// picking support
//VTK::Picking::Dec

// Depth Peeling Support
//VTK::DepthPeeling::Dec

// clipping plane vars
//VTK::Clip::Dec

// label outline 
//VTK::LabelOutline::Dec

// the output of this shader
//VTK::Output::Dec

// Apple Bug
//VTK::PrimID::Dec

// handle coincident offsets
//VTK::Coincident::Dec

//VTK::ZBuffer::Dec

//VTK::LabelOutlineHelperFunction

void main()
{
  // VC position of this fragment. This should not branch/return/discard.
  //VTK::PositionVC::Impl

  // Place any calls that require uniform flow (e.g. dFdx) here.
  //VTK::UniformFlow::Impl

  // Set gl_FragDepth here (gl_FragCoord.z by default)
  //VTK::Depth::Impl

  // Early depth peeling abort:
  //VTK::DepthPeeling::PreColor

  // Apple Bug
  //VTK::PrimID::Impl

  //VTK::Clip::Impl

  //VTK::Color::Impl

  // Generate the normal if we are not passed in one
  //VTK::Normal::Impl

  //VTK::TCoord::Impl

  //VTK::Light::Impl

  if (gl_FragData[0].a <= 0.0)
    {
    discard;
    }

  //VTK::DepthPeeling::Impl

  //VTK::Picking::Impl

  // handle coincident offsets
  //VTK::Coincident::Impl

  //VTK::ZBuffer::Impl

  //VTK::RenderPassFragmentShader::Impl
}
`;function QT(t,e,r={}){t.replaceShaderCoincidentOffset=(n,a,s)=>{let i=t.getCoincidentParameters(a,s);if(i&&(i.factor!==0||
i.offset!==0)){let o=n.Fragment;o=N.substitute(o,"//VTK::Coincident::Dec",["uniform float cfactor;","uniform float coffs\
et;"]).result,i.factor!==0?(o=N.substitute(o,"//VTK::UniformFlow::Impl",["float cscale = length(vec2(dFdx(gl_FragCoord.z\
),dFdy(gl_FragCoord.z)));","//VTK::UniformFlow::Impl"],!1).result,o=N.substitute(o,"//VTK::Depth::Impl","gl_FragDepth = \
gl_FragCoord.z + cfactor*cscale + 0.000016*coffset;").result):o=N.substitute(o,"//VTK::Depth::Impl","gl_FragDepth = gl_F\
ragCoord.z + 0.000016*coffset;").result,n.Fragment=o}}}function JT(t,e,r={}){t.applyShaderReplacements=(n,a,s)=>{let i=null;
if(a&&(i=a.ShaderReplacements),i)for(let o=0;o<i.length;o++){let f=i[o];if(s&&f.replaceFirst||!s&&!f.replaceFirst){let c=f.
shaderType,u=n[c];n[c]=N.substitute(u,f.originalValue,f.replacementValue,f.replaceAll).result}}},t.buildShaders=(n,a,s)=>{
t.getReplacedShaderTemplate(n,a,s),e.lastRenderPassShaderReplacement=e.currentRenderPass?e.currentRenderPass.getShaderReplacement():
null,e.lastRenderPassShaderReplacement&&e.lastRenderPassShaderReplacement(n);let i=e.renderable.getViewSpecificProperties().
OpenGL;t.applyShaderReplacements(n,i,!0),t.replaceShaderValues(n,a,s),t.applyShaderReplacements(n,i)},t.getReplacedShaderTemplate=
(n,a,s)=>{let i=e.renderable.getViewSpecificProperties().OpenGL;t.getShaderTemplate(n,a,s);let o=n.Vertex;if(i){let u=i.
VertexShaderCode;u!==void 0&&u!==""&&(o=u)}n.Vertex=o;let f=n.Fragment;if(i){let u=i.FragmentShaderCode;u!==void 0&&u!==
""&&(f=u)}n.Fragment=f;let c=n.Geometry;if(i){let u=i.GeometryShaderCode;u!==void 0&&(c=u)}n.Geometry=c}}var Ia={implementReplaceShaderCoincidentOffset:QT,
implementBuildShadersWithReplacements:JT};var{FieldAssociations:on}=_e,{primTypes:oe}=Qt,{Representation:ft,Shading:rc}=Ct,{ScalarMode:fn}=en,{Filter:nc,Wrap:ac}=Ae,
{vtkErrorMacro:ct}=Xe,IT={type:"StartEvent"},PT={type:"EndEvent"},{CoordinateSystem:bT}=$r;function e2(t){let e=t.getSelector();
return e?e.getCurrentPass():he.MIN_KNOWN_PASS-1}function t2(t,e){e.classHierarchy.push("vtkOpenGLPolyDataMapper"),t.buildPass=
a=>{a&&(e.currentRenderPass=null,e.openGLActor=t.getFirstAncestorOfType("vtkOpenGLActor"),e._openGLRenderer=e.openGLActor.
getFirstAncestorOfType("vtkOpenGLRenderer"),e._openGLRenderWindow=e._openGLRenderer.getLastAncestorOfType("vtkOpenGLRend\
erWindow"),e.openGLCamera=e._openGLRenderer.getViewNodeFor(e._openGLRenderer.getRenderable().getActiveCamera(),e.openGLCamera))},
t.translucentPass=(a,s)=>{a&&(e.currentRenderPass=s,t.render())},t.zBufferPass=a=>{a&&(e.haveSeenDepthRequest=!0,e.renderDepth=
!0,t.render(),e.renderDepth=!1)},t.opaqueZBufferPass=a=>t.zBufferPass(a),t.opaquePass=a=>{a&&t.render()},t.render=()=>{let a=e.
_openGLRenderWindow.getContext();if(e.context!==a){e.context=a;for(let o=oe.Start;o<oe.End;o++)e.primitives[o].setOpenGLRenderWindow(
e._openGLRenderWindow)}let s=e.openGLActor.getRenderable(),i=e._openGLRenderer.getRenderable();t.renderPiece(i,s)},t.getShaderTemplate=
(a,s,i)=>{a.Vertex=ec,a.Fragment=tc,a.Geometry=""},t.replaceShaderColor=(a,s,i)=>{let o=a.Vertex,f=a.Geometry,c=a.Fragment,
u=e.lastBoundBO.getReferenceByName("lastLightComplexity"),h=["uniform float ambient;","uniform float diffuse;","uniform \
float specular;","uniform float opacityUniform; // the fragment opacity","uniform vec3 ambientColorUniform;","uniform ve\
c3 diffuseColorUniform;"];u&&(h=h.concat(["uniform vec3 specularColorUniform;","uniform float specularPowerUniform;"]));
let l=["vec3 ambientColor;","  vec3 diffuseColor;","  float opacity;"];u&&(l=l.concat(["  vec3 specularColor;","  float \
specularPower;"])),l=l.concat(["  ambientColor = ambientColorUniform;","  diffuseColor = diffuseColorUniform;","  opacit\
y = opacityUniform;"]),u&&(l=l.concat(["  specularColor = specularColorUniform;","  specularPower = specularPowerUniform\
;"])),e.lastBoundBO.getCABO().getColorComponents()!==0&&!e.drawingEdges&&(h=h.concat(["varying vec4 vertexColorVSOutput;"]),
o=N.substitute(o,"//VTK::Color::Dec",["attribute vec4 scalarColor;","varying vec4 vertexColorVSOutput;"]).result,o=N.substitute(
o,"//VTK::Color::Impl",["vertexColorVSOutput =  scalarColor;"]).result,f=N.substitute(f,"//VTK::Color::Dec",["in vec4 ve\
rtexColorVSOutput[];","out vec4 vertexColorGSOutput;"]).result,f=N.substitute(f,"//VTK::Color::Impl",["vertexColorGSOutp\
ut = vertexColorVSOutput[i];"]).result),e.lastBoundBO.getCABO().getColorComponents()!==0&&!e.drawingEdges?c=N.substitute(
c,"//VTK::Color::Impl",l.concat(["  diffuseColor = vertexColorVSOutput.rgb;","  ambientColor = vertexColorVSOutput.rgb;",
"  opacity = opacity*vertexColorVSOutput.a;"])).result:(e.renderable.getAreScalarsMappedFromCells()||e.renderable.getInterpolateScalarsBeforeMapping())&&
e.renderable.getColorCoordinates()&&!e.drawingEdges?c=N.substitute(c,"//VTK::Color::Impl",l.concat(["  vec4 texColor = t\
exture2D(texture1, tcoordVCVSOutput.st);","  diffuseColor = texColor.rgb;","  ambientColor = texColor.rgb;","  opacity =\
 opacity*texColor.a;"])).result:(i.getBackfaceProperty()&&!e.drawingEdges&&(h=h.concat(["uniform float opacityUniformBF;\
 // the fragment opacity","uniform float ambientIntensityBF; // the material ambient","uniform float diffuseIntensityBF;\
 // the material diffuse","uniform vec3 ambientColorUniformBF; // ambient material color","uniform vec3 diffuseColorUnif\
ormBF; // diffuse material color"]),u?(h=h.concat(["uniform float specularIntensityBF; // the material specular intensit\
y","uniform vec3 specularColorUniformBF; // intensity weighted color","uniform float specularPowerUniformBF;"]),l=l.concat(
["if (gl_FrontFacing == false) {","  ambientColor = ambientIntensityBF * ambientColorUniformBF;","  diffuseColor = diffu\
seIntensityBF * diffuseColorUniformBF;","  specularColor = specularIntensityBF * specularColorUniformBF;","  specularPow\
er = specularPowerUniformBF;","  opacity = opacityUniformBF; }"])):l=l.concat(["if (gl_FrontFacing == false) {","  ambie\
ntColor = ambientIntensityBF * ambientColorUniformBF;","  diffuseColor = diffuseIntensityBF * diffuseColorUniformBF;"," \
 opacity = opacityUniformBF; }"])),e.haveCellScalars&&!e.drawingEdges&&(h=h.concat(["uniform samplerBuffer texture1;"])),
c=N.substitute(c,"//VTK::Color::Impl",l).result),c=N.substitute(c,"//VTK::Color::Dec",h).result,a.Vertex=o,a.Geometry=f,
a.Fragment=c},t.replaceShaderLight=(a,s,i)=>{let o=a.Fragment,f="",c=e.lastBoundBO.getReferenceByName("lastLightComplexi\
ty"),u=e.lastBoundBO.getReferenceByName("lastLightCount"),h=[];switch(c){case 0:o=N.substitute(o,"//VTK::Light::Impl",["\
  gl_FragData[0] = vec4(ambientColor * ambient + diffuseColor * diffuse, opacity);","  //VTK::Light::Impl"],!1).result;break;case 1:
o=N.substitute(o,"//VTK::Light::Impl",["  float df = max(0.0, normalVCVSOutput.z);","  float sf = pow(df, specularPower)\
;","  vec3 diffuseL = df * diffuseColor;","  vec3 specularL = sf * specularColor;","  gl_FragData[0] = vec4(ambientColor\
 * ambient + diffuseL * diffuse + specularL * specular, opacity);","  //VTK::Light::Impl"],!1).result;break;case 2:for(let l=0;l<
u;++l)h=h.concat([`uniform vec3 lightColor${l};`,`uniform vec3 lightDirectionVC${l}; // normalized`,`uniform vec3 lightH\
alfAngleVC${l}; // normalized`]);o=N.substitute(o,"//VTK::Light::Dec",h).result,h=["vec3 diffuseL = vec3(0,0,0);","  vec\
3 specularL = vec3(0,0,0);","  float df;"];for(let l=0;l<u;++l)h=h.concat([`  df = max(0.0, dot(normalVCVSOutput, -light\
DirectionVC${l}));`,`  diffuseL += ((df${f}) * lightColor${l});`,`  if (dot(normalVCVSOutput, lightDirectionVC${l}) < 0.\
0)`,"    {",`    float sf = sign(df)*pow(max(1e-5,
                                              dot(reflect(lightDirectionVC${l},normalVCVSOutput),
                                                  normalize(-vertexVC.xyz))),
                                         specularPower);`,`    specularL += (sf${f} * lightColor${l});`,"    }"]);h=h.concat(
["  diffuseL = diffuseL * diffuseColor;","  specularL = specularL * specularColor;","  gl_FragData[0] = vec4(ambientColo\
r * ambient + diffuseL * diffuse + specularL * specular, opacity);","  //VTK::Light::Impl"]),o=N.substitute(o,"//VTK::Li\
ght::Impl",h,!1).result;break;case 3:for(let l=0;l<u;++l)h=h.concat([`uniform vec3 lightColor${l};`,`uniform vec3 lightD\
irectionVC${l}; // normalized`,`uniform vec3 lightHalfAngleVC${l}; // normalized`,`uniform vec3 lightPositionVC${l};`,`u\
niform vec3 lightAttenuation${l};`,`uniform float lightConeAngle${l};`,`uniform float lightExponent${l};`,`uniform int l\
ightPositional${l};`]);o=N.substitute(o,"//VTK::Light::Dec",h).result,h=["vec3 diffuseL = vec3(0,0,0);","  vec3 specular\
L = vec3(0,0,0);","  vec3 vertLightDirectionVC;","  float attenuation;","  float df;"];for(let l=0;l<u;++l)h=h.concat(["\
  attenuation = 1.0;",`  if (lightPositional${l} == 0)`,"    {",`      vertLightDirectionVC = lightDirectionVC${l};`,"  \
  }","  else","    {",`    vertLightDirectionVC = vertexVC.xyz - lightPositionVC${l};`,"    float distanceVC = length(ve\
rtLightDirectionVC);","    vertLightDirectionVC = normalize(vertLightDirectionVC);","    attenuation = 1.0 /",`      (li\
ghtAttenuation${l}.x`,`       + lightAttenuation${l}.y * distanceVC`,`       + lightAttenuation${l}.z * distanceVC * dis\
tanceVC);`,"    // per OpenGL standard cone angle is 90 or less for a spot light",`    if (lightConeAngle${l} <= 90.0)`,
"      {",`      float coneDot = dot(vertLightDirectionVC, lightDirectionVC${l});`,"      // if inside the cone",`      \
if (coneDot >= cos(radians(lightConeAngle${l})))`,"        {",`        attenuation = attenuation * pow(coneDot, lightExp\
onent${l});`,"        }","      else","        {","        attenuation = 0.0;","        }","      }","    }","    df = m\
ax(0.0, attenuation*dot(normalVCVSOutput, -vertLightDirectionVC));",`    diffuseL += ((df${f}) * lightColor${l});`,"    \
if (dot(normalVCVSOutput, vertLightDirectionVC) < 0.0)","      {",`      float sf = sign(df)*attenuation*pow(max(1e-5,
                                                           dot(reflect(lightDirectionVC${l},
                                                                       normalVCVSOutput),
                                                               normalize(-vertexVC.xyz))),
                                                       specularPower);`,`    specularL += ((sf${f}) * lightColor${l});`,
"    }"]);h=h.concat(["  diffuseL = diffuseL * diffuseColor;","  specularL = specularL * specularColor;","  gl_FragData[\
0] = vec4(ambientColor * ambient + diffuseL * diffuse + specularL * specular, opacity);","  //VTK::Light::Impl"]),o=N.substitute(
o,"//VTK::Light::Impl",h,!1).result;break;default:ct("bad light complexity")}a.Fragment=o},t.replaceShaderNormal=(a,s,i)=>{
if(e.lastBoundBO.getReferenceByName("lastLightComplexity")>0){let o=a.Vertex,f=a.Geometry,c=a.Fragment;e.lastBoundBO.getCABO().
getNormalOffset()?(o=N.substitute(o,"//VTK::Normal::Dec",["attribute vec3 normalMC;","uniform mat3 normalMatrix;","varyi\
ng vec3 normalVCVSOutput;"]).result,o=N.substitute(o,"//VTK::Normal::Impl",["normalVCVSOutput = normalMatrix * normalMC;"]).
result,f=N.substitute(f,"//VTK::Normal::Dec",["in vec3 normalVCVSOutput[];","out vec3 normalVCGSOutput;"]).result,f=N.substitute(
f,"//VTK::Normal::Impl",["normalVCGSOutput = normalVCVSOutput[i];"]).result,c=N.substitute(c,"//VTK::Normal::Dec",["vary\
ing vec3 normalVCVSOutput;"]).result,c=N.substitute(c,"//VTK::Normal::Impl",["vec3 normalVCVSOutput = normalize(normalVC\
VSOutput);","  if (gl_FrontFacing == false) { normalVCVSOutput = -normalVCVSOutput; }"]).result):e.haveCellNormals?(c=N.
substitute(c,"//VTK::Normal::Dec",["uniform mat3 normalMatrix;","uniform samplerBuffer textureN;"]).result,c=N.substitute(
c,"//VTK::Normal::Impl",["vec3 normalVCVSOutput = normalize(normalMatrix *","    texelFetchBuffer(textureN, gl_Primitive\
ID + PrimitiveIDOffset).xyz);","  if (gl_FrontFacing == false) { normalVCVSOutput = -normalVCVSOutput; }"]).result):e.lastBoundBO.
getOpenGLMode(i.getProperty().getRepresentation())===e.context.LINES?(c=N.substitute(c,"//VTK::UniformFlow::Impl",["  ve\
c3 fdx = dFdx(vertexVC.xyz);","  vec3 fdy = dFdy(vertexVC.xyz);","  //VTK::UniformFlow::Impl"]).result,c=N.substitute(c,
"//VTK::Normal::Impl",["vec3 normalVCVSOutput;","  if (abs(fdx.x) > 0.0)","    { fdx = normalize(fdx); normalVCVSOutput \
= normalize(cross(vec3(fdx.y, -fdx.x, 0.0), fdx)); }","  else { fdy = normalize(fdy); normalVCVSOutput = normalize(cross\
(vec3(fdy.y, -fdy.x, 0.0), fdy));}"]).result):(c=N.substitute(c,"//VTK::Normal::Dec",["uniform int cameraParallel;"]).result,
c=N.substitute(c,"//VTK::UniformFlow::Impl",["  vec3 fdx = dFdx(vertexVC.xyz);","  vec3 fdy = dFdy(vertexVC.xyz);","  //\
VTK::UniformFlow::Impl"]).result,c=N.substitute(c,"//VTK::Normal::Impl",["  fdx = normalize(fdx);","  fdy = normalize(fd\
y);","  vec3 normalVCVSOutput = normalize(cross(fdx,fdy));","  if (cameraParallel == 1 && normalVCVSOutput.z < 0.0) { no\
rmalVCVSOutput = -1.0*normalVCVSOutput; }","  if (cameraParallel == 0 && dot(normalVCVSOutput,vertexVC.xyz) > 0.0) { nor\
malVCVSOutput = -1.0*normalVCVSOutput; }"]).result),a.Vertex=o,a.Geometry=f,a.Fragment=c}},t.replaceShaderPositionVC=(a,s,i)=>{
e.lastBoundBO.replaceShaderPositionVC(a,s,i);let o=a.Vertex,f=a.Geometry,c=a.Fragment;e.lastBoundBO.getReferenceByName("\
lastLightComplexity")>0?(o=N.substitute(o,"//VTK::PositionVC::Dec",["varying vec4 vertexVCVSOutput;"]).result,o=N.substitute(
o,"//VTK::PositionVC::Impl",["vertexVCVSOutput = MCVCMatrix * vertexMC;","  gl_Position = MCPCMatrix * vertexMC;"]).result,
o=N.substitute(o,"//VTK::Camera::Dec",["uniform mat4 MCPCMatrix;","uniform mat4 MCVCMatrix;"]).result,f=N.substitute(f,"\
//VTK::PositionVC::Dec",["in vec4 vertexVCVSOutput[];","out vec4 vertexVCGSOutput;"]).result,f=N.substitute(f,"//VTK::Po\
sitionVC::Impl",["vertexVCGSOutput = vertexVCVSOutput[i];"]).result,c=N.substitute(c,"//VTK::PositionVC::Dec",["varying \
vec4 vertexVCVSOutput;"]).result,c=N.substitute(c,"//VTK::PositionVC::Impl",["vec4 vertexVC = vertexVCVSOutput;"]).result):
(o=N.substitute(o,"//VTK::Camera::Dec",["uniform mat4 MCPCMatrix;"]).result,o=N.substitute(o,"//VTK::PositionVC::Impl",[
"  gl_Position = MCPCMatrix * vertexMC;"]).result),a.Vertex=o,a.Geometry=f,a.Fragment=c},t.replaceShaderTCoord=(a,s,i)=>{
if(e.lastBoundBO.getCABO().getTCoordOffset()){let o=a.Vertex,f=a.Geometry,c=a.Fragment;if(e.drawingEdges)return;o=N.substitute(
o,"//VTK::TCoord::Impl","tcoordVCVSOutput = tcoordMC;").result;let u=e.openGLActor.getActiveTextures(),h=2,l=2;if(u&&u.length>
0&&(h=u[0].getComponents(),u[0].getTarget()===e.context.TEXTURE_CUBE_MAP&&(l=3)),e.renderable.getColorTextureMap()&&(h=e.
renderable.getColorTextureMap().getPointData().getScalars().getNumberOfComponents(),l=2),l===2){if(o=N.substitute(o,"//V\
TK::TCoord::Dec","attribute vec2 tcoordMC; varying vec2 tcoordVCVSOutput;").result,f=N.substitute(f,"//VTK::TCoord::Dec",
["in vec2 tcoordVCVSOutput[];","out vec2 tcoordVCGSOutput;"]).result,f=N.substitute(f,"//VTK::TCoord::Impl","tcoordVCGSO\
utput = tcoordVCVSOutput[i];").result,c=N.substitute(c,"//VTK::TCoord::Dec",["varying vec2 tcoordVCVSOutput;","uniform s\
ampler2D texture1;"]).result,u&&u.length>=1)switch(h){case 1:c=N.substitute(c,"//VTK::TCoord::Impl",["  vec4 tcolor = te\
xture2D(texture1, tcoordVCVSOutput);","  ambientColor = ambientColor*tcolor.r;","  diffuseColor = diffuseColor*tcolor.r;"]).
result;break;case 2:c=N.substitute(c,"//VTK::TCoord::Impl",["  vec4 tcolor = texture2D(texture1, tcoordVCVSOutput);","  \
ambientColor = ambientColor*tcolor.r;","  diffuseColor = diffuseColor*tcolor.r;","  opacity = opacity * tcolor.g;"]).result;
break;default:c=N.substitute(c,"//VTK::TCoord::Impl",["  vec4 tcolor = texture2D(texture1, tcoordVCVSOutput);","  ambien\
tColor = ambientColor*tcolor.rgb;","  diffuseColor = diffuseColor*tcolor.rgb;","  opacity = opacity * tcolor.a;"]).result}}else
switch(o=N.substitute(o,"//VTK::TCoord::Dec","attribute vec3 tcoordMC; varying vec3 tcoordVCVSOutput;").result,f=N.substitute(
f,"//VTK::TCoord::Dec",["in vec3 tcoordVCVSOutput[];","out vec3 tcoordVCGSOutput;"]).result,f=N.substitute(f,"//VTK::TCo\
ord::Impl","tcoordVCGSOutput = tcoordVCVSOutput[i];").result,c=N.substitute(c,"//VTK::TCoord::Dec",["varying vec3 tcoord\
VCVSOutput;","uniform samplerCube texture1;"]).result,h){case 1:c=N.substitute(c,"//VTK::TCoord::Impl",["  vec4 tcolor =\
 textureCube(texture1, tcoordVCVSOutput);","  ambientColor = ambientColor*tcolor.r;","  diffuseColor = diffuseColor*tcol\
or.r;"]).result;break;case 2:c=N.substitute(c,"//VTK::TCoord::Impl",["  vec4 tcolor = textureCube(texture1, tcoordVCVSOu\
tput);","  ambientColor = ambientColor*tcolor.r;","  diffuseColor = diffuseColor*tcolor.r;","  opacity = opacity * tcolo\
r.g;"]).result;break;default:c=N.substitute(c,"//VTK::TCoord::Impl",["  vec4 tcolor = textureCube(texture1, tcoordVCVSOu\
tput);","  ambientColor = ambientColor*tcolor.rgb;","  diffuseColor = diffuseColor*tcolor.rgb;","  opacity = opacity * t\
color.a;"]).result}a.Vertex=o,a.Geometry=f,a.Fragment=c}},t.replaceShaderClip=(a,s,i)=>{let o=a.Vertex,f=a.Fragment;if(e.
renderable.getNumberOfClippingPlanes()){let c=e.renderable.getNumberOfClippingPlanes();o=N.substitute(o,"//VTK::Clip::De\
c",["uniform int numClipPlanes;",`uniform vec4 clipPlanes[${c}];`,`varying float clipDistancesVSOutput[${c}];`]).result,
o=N.substitute(o,"//VTK::Clip::Impl",[`for (int planeNum = 0; planeNum < ${c}; planeNum++)`,"    {","    if (planeNum >=\
 numClipPlanes)","        {","        break;","        }","    clipDistancesVSOutput[planeNum] = dot(clipPlanes[planeNum\
], vertexMC);","    }"]).result,f=N.substitute(f,"//VTK::Clip::Dec",["uniform int numClipPlanes;",`varying float clipDis\
tancesVSOutput[${c}];`]).result,f=N.substitute(f,"//VTK::Clip::Impl",[`for (int planeNum = 0; planeNum < ${c}; planeNum+\
+)`,"    {","    if (planeNum >= numClipPlanes)","        {","        break;","        }","    if (clipDistancesVSOutput\
[planeNum] < 0.0) discard;","    }"]).result}a.Vertex=o,a.Fragment=f},t.getCoincidentParameters=(a,s)=>{let i={factor:0,
offset:0},o=s.getProperty();if(e.renderable.getResolveCoincidentTopology()==Ne.PolygonOffset||o.getEdgeVisibility()&&o.getRepresentation()===
ft.SURFACE){let c=e.lastBoundBO.getPrimitiveType();c===oe.Points||o.getRepresentation()===ft.POINTS?i=e.renderable.getCoincidentTopologyPointOffsetParameter():
c===oe.Lines||o.getRepresentation()===ft.WIREFRAME?i=e.renderable.getCoincidentTopologyLineOffsetParameters():(c===oe.Tris||
c===oe.TriStrips)&&(i=e.renderable.getCoincidentTopologyPolygonOffsetParameters()),(c===oe.TrisEdges||c===oe.TriStripsEdges)&&
(i=e.renderable.getCoincidentTopologyPolygonOffsetParameters(),i.factor/=2,i.offset/=2)}let f=e._openGLRenderer.getSelector();
return f&&f.getFieldAssociation()===on.FIELD_ASSOCIATION_POINTS&&(i.offset-=2),i},t.replaceShaderPicking=(a,s,i)=>{let o=a.
Fragment,f=a.Vertex;if(o=N.substitute(o,"//VTK::Picking::Dec",["uniform int picking;","//VTK::Picking::Dec"]).result,!!e.
_openGLRenderer.getSelector()){switch((e.lastSelectionState===he.ID_LOW24||e.lastSelectionState===he.ID_HIGH24)&&(f=N.substitute(
f,"//VTK::Picking::Dec",[`flat out int vertexIDVSOutput;
`,`uniform int VertexIDOffset;
`]).result,f=N.substitute(f,"//VTK::Picking::Impl",`  vertexIDVSOutput = gl_VertexID + VertexIDOffset;
`).result,o=N.substitute(o,"//VTK::Picking::Dec",`flat in int vertexIDVSOutput;
`).result,o=N.substitute(o,"//VTK::Picking::Impl",["  int idx = vertexIDVSOutput;","//VTK::Picking::Impl"]).result),e.lastSelectionState){case he.
ID_LOW24:o=N.substitute(o,"//VTK::Picking::Impl","  gl_FragData[0] = vec4(float(idx%256)/255.0, float((idx/256)%256)/255\
.0, float((idx/65536)%256)/255.0, 1.0);").result;break;case he.ID_HIGH24:o=N.substitute(o,"//VTK::Picking::Impl","  gl_F\
ragData[0] = vec4(float((idx/16777216)%256)/255.0, 0.0, 0.0, 1.0);").result;break;default:o=N.substitute(o,"//VTK::Picki\
ng::Dec","uniform vec3 mapperIndex;").result,o=N.substitute(o,"//VTK::Picking::Impl","  gl_FragData[0] = picking != 0 ? \
vec4(mapperIndex,1.0) : gl_FragData[0];").result}a.Fragment=o,a.Vertex=f}},t.replaceShaderValues=(a,s,i)=>{if(t.replaceShaderColor(
a,s,i),t.replaceShaderNormal(a,s,i),t.replaceShaderLight(a,s,i),t.replaceShaderTCoord(a,s,i),t.replaceShaderPicking(a,s,
i),t.replaceShaderClip(a,s,i),t.replaceShaderCoincidentOffset(a,s,i),t.replaceShaderPositionVC(a,s,i),e.haveSeenDepthRequest){
let o=a.Fragment;o=N.substitute(o,"//VTK::ZBuffer::Dec","uniform int depthRequest;").result,o=N.substitute(o,"//VTK::ZBu\
ffer::Impl",["if (depthRequest == 1) {","float iz = floor(gl_FragCoord.z*65535.0 + 0.1);","float rf = floor(iz/256.0)/25\
5.0;","float gf = mod(iz,256.0)/255.0;","gl_FragData[0] = vec4(rf, gf, 0.0, 1.0); }"]).result,a.Fragment=o}},t.getNeedToRebuildShaders=
(a,s,i)=>{let o=0,f=0,c=a.getPrimitiveType(),u=e.currentInput,h=!1,l=u.getPointData().getNormals(),p=u.getCellData().getNormals(),
x=i.getProperty().getInterpolation()===rc.FLAT,g=i.getProperty().getRepresentation(),y=a.getOpenGLMode(g,c);if((y===e.context.
TRIANGLES||p&&!l||!x&&l||!x&&y===e.context.LINES)&&(h=!0),i.getProperty().getLighting()&&h){o=0;let T=s.getLightsByReference();
for(let S=0;S<T.length;++S){let d=T[S];d.getSwitch()>0&&(f++,o===0&&(o=1)),o===1&&(f>1||d.getIntensity()!==1||!d.lightTypeIsHeadLight())&&
(o=2),o<3&&d.getPositional()&&(o=3)}}let C=!1,M=e.lastBoundBO.getReferenceByName("lastLightComplexity"),v=e.lastBoundBO.
getReferenceByName("lastLightCount");return(M!==o||v!==f)&&(e.lastBoundBO.set({lastLightComplexity:o},!0),e.lastBoundBO.
set({lastLightCount:f},!0),C=!0),(!e.currentRenderPass&&e.lastRenderPassShaderReplacement||e.currentRenderPass&&e.currentRenderPass.
getShaderReplacement()!==e.lastRenderPassShaderReplacement)&&(C=!0),e.lastHaveSeenDepthRequest!==e.haveSeenDepthRequest||
a.getShaderSourceTime().getMTime()<e.renderable.getMTime()||a.getShaderSourceTime().getMTime()<e.currentInput.getMTime()||
a.getShaderSourceTime().getMTime()<e.selectionStateChanged.getMTime()||C?(e.lastHaveSeenDepthRequest=e.haveSeenDepthRequest,
!0):!1},t.invokeShaderCallbacks=(a,s,i)=>{let o=e.renderable.getViewSpecificProperties().ShadersCallbacks;o&&o.forEach(f=>{
f.callback(f.userData,a,s,i)})},t.setMapperShaderParameters=(a,s,i)=>{if(a.getProgram().isUniformUsed("PrimitiveIDOffset")&&
a.getProgram().setUniformi("PrimitiveIDOffset",e.primitiveIDOffset),a.getProgram().isUniformUsed("VertexIDOffset")&&a.getProgram().
setUniformi("VertexIDOffset",e.vertexIDOffset),a.getCABO().getElementCount()&&(e.VBOBuildTime.getMTime()>a.getAttributeUpdateTime().
getMTime()||a.getShaderSourceTime().getMTime()>a.getAttributeUpdateTime().getMTime())){let c=e.lastBoundBO.getReferenceByName(
"lastLightComplexity");a.getProgram().isAttributeUsed("vertexMC")&&(a.getVAO().addAttributeArray(a.getProgram(),a.getCABO(),
"vertexMC",a.getCABO().getVertexOffset(),a.getCABO().getStride(),e.context.FLOAT,3,!1)||ct("Error setting vertexMC in sh\
ader VAO.")),a.getProgram().isAttributeUsed("normalMC")&&a.getCABO().getNormalOffset()&&c>0?a.getVAO().addAttributeArray(
a.getProgram(),a.getCABO(),"normalMC",a.getCABO().getNormalOffset(),a.getCABO().getStride(),e.context.FLOAT,3,!1)||ct("E\
rror setting normalMC in shader VAO."):a.getVAO().removeAttributeArray("normalMC"),e.renderable.getCustomShaderAttributes().
forEach((u,h)=>{a.getProgram().isAttributeUsed(`${u}MC`)&&(a.getVAO().addAttributeArray(a.getProgram(),a.getCABO(),`${u}\
MC`,a.getCABO().getCustomData()[h].offset,a.getCABO().getStride(),e.context.FLOAT,a.getCABO().getCustomData()[h].components,
!1)||ct(`Error setting ${u}MC in shader VAO.`))}),a.getProgram().isAttributeUsed("tcoordMC")&&a.getCABO().getTCoordOffset()?
a.getVAO().addAttributeArray(a.getProgram(),a.getCABO(),"tcoordMC",a.getCABO().getTCoordOffset(),a.getCABO().getStride(),
e.context.FLOAT,a.getCABO().getTCoordComponents(),!1)||ct("Error setting tcoordMC in shader VAO."):a.getVAO().removeAttributeArray(
"tcoordMC"),a.getProgram().isAttributeUsed("scalarColor")&&a.getCABO().getColorComponents()?a.getVAO().addAttributeArray(
a.getProgram(),a.getCABO().getColorBO(),"scalarColor",a.getCABO().getColorOffset(),a.getCABO().getColorBOStride(),e.context.
UNSIGNED_BYTE,4,!0)||ct("Error setting scalarColor in shader VAO."):a.getVAO().removeAttributeArray("scalarColor"),a.getAttributeUpdateTime().
modified()}if(e.renderable.getNumberOfClippingPlanes()){let c=e.renderable.getNumberOfClippingPlanes(),u=[],h=a.getCABO().
getCoordShiftAndScaleEnabled()?a.getCABO().getInverseShiftAndScaleMatrix():null,l=h?_.copy(e.tmpMat4,i.getMatrix()):i.getMatrix();
h&&(_.transpose(l,l),_.multiply(l,l,h),_.transpose(l,l));for(let p=0;p<c;p++){let x=[];e.renderable.getClippingPlaneInDataCoords(
l,p,x);for(let g=0;g<4;g++)u.push(x[g])}a.getProgram().setUniformi("numClipPlanes",c),a.getProgram().setUniform4fv("clip\
Planes",u)}e.internalColorTexture&&a.getProgram().isUniformUsed("texture1")&&a.getProgram().setUniformi("texture1",e.internalColorTexture.
getTextureUnit());let o=e.openGLActor.getActiveTextures();if(o)for(let c=0;c<o.length;++c){let u=o[c].getTextureUnit(),h=`\
texture${u+1}`;a.getProgram().isUniformUsed(h)&&a.getProgram().setUniformi(h,u)}if(e.haveSeenDepthRequest&&a.getProgram().
setUniformi("depthRequest",e.renderDepth?1:0),a.getProgram().isUniformUsed("coffset")){let c=t.getCoincidentParameters(s,
i);a.getProgram().setUniformf("coffset",c.offset),a.getProgram().isUniformUsed("cfactor")&&a.getProgram().setUniformf("c\
factor",c.factor)}a.setMapperShaderParameters(s,i,e._openGLRenderer.getTiledSizeAndOrigin());let f=e._openGLRenderer.getSelector();
a.getProgram().setUniform3fArray("mapperIndex",f?f.getPropColorValue():[0,0,0]),a.getProgram().setUniformi("picking",f?f.
getCurrentPass()+1:0)},t.setLightingShaderParameters=(a,s,i)=>{let o=e.lastBoundBO.getReferenceByName("lastLightComplexi\
ty");if(o<2)return;let f=a.getProgram(),c=0,u=s.getLightsByReference();for(let l=0;l<u.length;++l){let p=u[l];if(p.getSwitch()>
0){let x=p.getColorByReference(),g=p.getIntensity();e.lightColor[0]=x[0]*g,e.lightColor[1]=x[1]*g,e.lightColor[2]=x[2]*g;
let y=p.getDirection(),C=s.getActiveCamera().getViewMatrix(),M=[...y];p.lightTypeIsSceneLight()&&(M[0]=C[0]*y[0]+C[1]*y[1]+
C[2]*y[2],M[1]=C[4]*y[0]+C[5]*y[1]+C[6]*y[2],M[2]=C[8]*y[0]+C[9]*y[1]+C[10]*y[2],ve(M)),e.lightDirection[0]=M[0],e.lightDirection[1]=
M[1],e.lightDirection[2]=M[2],ve(e.lightDirection),f.setUniform3fArray(`lightColor${c}`,e.lightColor),f.setUniform3fArray(
`lightDirectionVC${c}`,e.lightDirection),c++}}if(o<3)return;let h=s.getActiveCamera().getViewMatrix();_.transpose(h,h),c=
0;for(let l=0;l<u.length;++l){let p=u[l];if(p.getSwitch()>0){let x=p.getTransformedPosition(),g=new Float64Array(3);k.transformMat4(
g,x,h),f.setUniform3fArray(`lightAttenuation${c}`,p.getAttenuationValuesByReference()),f.setUniformi(`lightPositional${c}`,
p.getPositional()),f.setUniformf(`lightExponent${c}`,p.getExponent()),f.setUniformf(`lightConeAngle${c}`,p.getConeAngle()),
f.setUniform3fArray(`lightPositionVC${c}`,[g[0],g[1],g[2]]),c++}}};function r(a,s,i){return s.identity(i),a.reduce((o,f,c)=>c===
0?f?s.copy(o,f):s.identity(o):f?s.multiply(o,o,f):o,i)}t.setCameraShaderParameters=(a,s,i)=>{let o=a.getProgram(),f=e.openGLCamera.
getKeyMatrices(s),c=s.getActiveCamera(),u=e.openGLCamera.getKeyMatrixTime().getMTime(),h=o.getLastCameraMTime(),l=a.getCABO().
getCoordShiftAndScaleEnabled()?a.getCABO().getInverseShiftAndScaleMatrix():null,p=i.getIsIdentity(),x=p?{mcwc:null,normalMatrix:null}:
e.openGLActor.getKeyMatrices();if(i.getCoordinateSystem()===bT.DISPLAY){let g=e._openGLRenderer.getTiledSizeAndOrigin();
_.identity(e.tmpMat4),e.tmpMat4[0]=2/g.usize,e.tmpMat4[12]=-1,e.tmpMat4[5]=2/g.vsize,e.tmpMat4[13]=-1,_.multiply(e.tmpMat4,
e.tmpMat4,l),o.setUniformMatrix("MCPCMatrix",e.tmpMat4)}else o.setUniformMatrix("MCPCMatrix",r([f.wcpc,x.mcwc,l],_,e.tmpMat4));
o.isUniformUsed("MCVCMatrix")&&o.setUniformMatrix("MCVCMatrix",r([f.wcvc,x.mcwc,l],_,e.tmpMat4)),o.isUniformUsed("normal\
Matrix")&&o.setUniformMatrix3x3("normalMatrix",r([f.normalMatrix,x.normalMatrix],ce,e.tmpMat3)),h!==u&&(o.isUniformUsed(
"cameraParallel")&&o.setUniformi("cameraParallel",c.getParallelProjection()),o.setLastCameraMTime(u)),p||o.setLastCameraMTime(
0)},t.setPropertyShaderParameters=(a,s,i)=>{let o=a.getProgram(),f=i.getProperty(),c=e.drawingEdges||f.getRepresentation()===
ft.WIREFRAME?f.getEdgeOpacity():f.getOpacity(),u=e.drawingEdges?f.getEdgeColorByReference():f.getAmbientColorByReference(),
h=e.drawingEdges?f.getEdgeColorByReference():f.getDiffuseColorByReference(),l=e.drawingEdges?1:f.getAmbient(),p=e.drawingEdges?
0:f.getDiffuse(),x=e.drawingEdges?0:f.getSpecular(),g=f.getSpecularPower();o.setUniformf("opacityUniform",c),o.setUniform3fArray(
"ambientColorUniform",u),o.setUniform3fArray("diffuseColorUniform",h),o.setUniformf("ambient",l),o.setUniformf("diffuse",
p);let y=e.lastBoundBO.getReferenceByName("lastLightComplexity");if(y<1)return;let C=f.getSpecularColorByReference();if(o.
setUniform3fArray("specularColorUniform",C),o.setUniformf("specularPowerUniform",g),o.setUniformf("specular",x),o.isUniformUsed(
"ambientIntensityBF")){if(f=i.getBackfaceProperty(),c=f.getOpacity(),u=f.getAmbientColor(),l=f.getAmbient(),h=f.getDiffuseColor(),
p=f.getDiffuse(),C=f.getSpecularColor(),x=f.getSpecular(),o.setUniformf("ambientIntensityBF",l),o.setUniformf("diffuseIn\
tensityBF",p),o.setUniformf("opacityUniformBF",c),o.setUniform3fArray("ambientColorUniformBF",u),o.setUniform3fArray("di\
ffuseColorUniformBF",h),y<1)return;o.setUniformf("specularIntensityBF",x),o.setUniform3fArray("specularColorUniformBF",C),
o.setUniformf("specularPowerUniformBF",g)}},t.updateMaximumPointCellIds=(a,s)=>{let i=e._openGLRenderer.getSelector();if(i){
if(e.selectionWebGLIdsToVTKIds?.points?.length){let o=e.selectionWebGLIdsToVTKIds.points.length;i.setMaximumPointId(o-1)}else
e.currentInput&&e.currentInput.getPoints()&&i.setMaximumPointId(e.currentInput.getPoints().getNumberOfPoints()-1);if(e.selectionWebGLIdsToVTKIds?.
cells?.length){let o=e.selectionWebGLIdsToVTKIds.cells.length;i.setMaximumCellId(o-1)}i.getFieldAssociation()===on.FIELD_ASSOCIATION_POINTS&&
(e.pointPicking=!0)}},t.renderPieceStart=(a,s)=>{e.primitiveIDOffset=0,e.vertexIDOffset=0;let i=e2(e._openGLRenderer);e.
lastSelectionState!==i&&(e.selectionStateChanged.modified(),e.lastSelectionState=i),e._openGLRenderer.getSelector()&&e._openGLRenderer.
getSelector().renderProp(s),t.updateBufferObjects(a,s),e.renderable.getColorTextureMap()&&e.internalColorTexture.activate(),
e.lastBoundBO=null},t.renderPieceDraw=(a,s)=>{let i=s.getProperty().getRepresentation(),o=s.getProperty().getEdgeVisibility()&&
i===ft.SURFACE,f=e._openGLRenderer.getSelector(),c=f&&f.getFieldAssociation()===on.FIELD_ASSOCIATION_POINTS&&(e.lastSelectionState===
he.ID_LOW24||e.lastSelectionState===he.ID_HIGH24),u=e.activePrimitiveIndices;for(let h=0;h<u.length;h++){let l=u[h];e.primitives[l].
setPointPicking(c);let p=e.primitives[l].getCABO();p.getElementCount()&&(e.drawingEdges=o&&(l===oe.TrisEdges||l===oe.TriStripsEdges),
(!e.drawingEdges||!(e.renderDepth||e.lastSelectionState>=0))&&(e.lastBoundBO=e.primitives[l],e.primitiveIDOffset+=e.primitives[l].
drawArrays(a,s,i,t),p.getIndexed()||(e.vertexIDOffset+=p.getElementCount())))}},t.renderPieceFinish=(a,s)=>{e.LastBoundBO&&
e.LastBoundBO.getVAO().release(),e.renderable.getColorTextureMap()&&e.internalColorTexture.deactivate()},t.renderPiece=(a,s)=>{
if(t.invokeEvent(IT),e.renderable.getStatic()||e.renderable.update(),e.currentInput=e.renderable.getInputData(),t.invokeEvent(
PT),!e.currentInput){ct("No input!");return}if(!e.currentInput.getPoints||!e.currentInput.getPoints().getNumberOfValues())
return;let i=e.context,o=s.getProperty().getBackfaceCulling(),f=s.getProperty().getFrontfaceCulling();!o&&!f?e._openGLRenderWindow.
disableCullFace():f?(e._openGLRenderWindow.enableCullFace(),e._openGLRenderWindow.setCullFaceMode(i.FRONT)):(e._openGLRenderWindow.
enableCullFace(),e._openGLRenderWindow.setCullFaceMode(i.BACK)),t.renderPieceStart(a,s),t.renderPieceDraw(a,s),t.renderPieceFinish(
a,s)},t.updateBufferObjects=(a,s)=>{if(t.getNeedToRebuildBufferObjects(a,s)){t.buildBufferObjects(a,s),e.activePrimitiveIndices.
length=0;for(let i=oe.Start;i<oe.End;i++)e.primitives[i].getCABO().getElementCount()&&e.activePrimitiveIndices.push(i)}t.
updateMaximumPointCellIds()};function n(){let a=e._openGLRenderer?e._openGLRenderer.getSelector():null;return!!a&&e.renderable.
getPopulateSelectionSettings()&&a.getFieldAssociation()===on.FIELD_ASSOCIATION_CELLS}t.getNeedToRebuildBufferObjects=(a,s)=>{
let i=e.VBOBuildTime.getMTime();return i<t.getMTime()||i<e.renderable.getMTime()||i<s.getMTime()||i<e.currentInput.getMTime()||
n()!==e.lastForceFlatten},t.buildBufferObjects=(a,s)=>{let i=e.currentInput;if(i===null)return;e.renderable.mapScalars(i,
1);let o=e.renderable.getColorMapColors();e.haveCellScalars=!1;let f=e.renderable.getScalarMode();e.renderable.getScalarVisibility()&&
(f===fn.USE_CELL_DATA||f===fn.USE_CELL_FIELD_DATA||f===fn.USE_FIELD_DATA||!i.getPointData().getScalars())&&f!==fn.USE_POINT_FIELD_DATA&&
o&&(e.haveCellScalars=!0);let c=s.getProperty().getInterpolation()!==rc.FLAT?i.getPointData().getNormals():null;c===null&&
i.getCellData().getNormals()&&(e.haveCellNormals=!0,c=i.getCellData().getNormals());let u=s.getProperty().getRepresentation(),
h=i.getPointData().getTCoords();e.openGLActor.getActiveTextures()||(h=null);let l=!1;if(e.renderable.getColorCoordinates()){
h=e.renderable.getColorCoordinates(),l=e.renderable.getAreScalarsMappedFromCells(),e.internalColorTexture||(e.internalColorTexture=
Ae.newInstance({resizable:!0}));let y=e.internalColorTexture;y.setMinificationFilter(nc.NEAREST),y.setMagnificationFilter(
nc.NEAREST),y.setWrapS(ac.CLAMP_TO_EDGE),y.setWrapT(ac.CLAMP_TO_EDGE),y.setOpenGLRenderWindow(e._openGLRenderWindow);let C=e.
renderable.getColorTextureMap(),M=C.getExtent(),v=C.getPointData().getScalars();y.create2DFromRaw({width:M[1]-M[0]+1,height:M[3]-
M[2]+1,numComps:v.getNumberOfComponents(),dataType:v.getDataType(),data:v.getData()}),y.activate(),y.sendParameters(),y.
deactivate()}let p=e.renderable.getCustomShaderAttributes().map(y=>i.getPointData().getArrayByName(y)),x=n();e.lastForceFlatten=
x;let g=`${i.getMTime()}A${u}B${i.getMTime()}C${c?c.getMTime():1}D${o?o.getMTime():1}E${s.getProperty().getEdgeVisibility()}\
F${h?h.getMTime():1}G${p.map(y=>y.getMTime()).join(",")}H${x}`;if(e.VBOBuildString!==g){let y={points:i.getPoints(),normals:c,
tcoords:h,colors:o,cellOffset:0,vertexOffset:0,useTCoordsPerCell:l,haveCellScalars:e.haveCellScalars,haveCellNormals:e.haveCellNormals,
customAttributes:p,forceFlatten:x};x?e.selectionWebGLIdsToVTKIds={points:null,cells:null}:e.selectionWebGLIdsToVTKIds=null;
let C=[{inRep:"verts",cells:i.getVerts()},{inRep:"lines",cells:i.getLines()},{inRep:"polys",cells:i.getPolys()},{inRep:"\
strips",cells:i.getStrips()},{inRep:"polys",cells:i.getPolys()},{inRep:"strips",cells:i.getStrips()}],M=s.getProperty().
getEdgeVisibility()&&u===ft.SURFACE;for(let v=oe.Start;v<oe.End;v++)v!==oe.TrisEdges&&v!==oe.TriStripsEdges?(y.cellOffset+=
e.primitives[v].getCABO().createVBO(C[v].cells,C[v].inRep,u,y,e.selectionWebGLIdsToVTKIds),y.vertexOffset+=e.primitives[v].
getCABO().getElementCount()):M?e.primitives[v].getCABO().createVBO(C[v].cells,C[v].inRep,ft.WIREFRAME,{...y,tcoords:null,
colors:null,haveCellScalars:!1,haveCellNormals:!1}):e.primitives[v].releaseGraphicsResources();e.renderable.getPopulateSelectionSettings()&&
e.renderable.setSelectionWebGLIdsToVTKIds(e.selectionWebGLIdsToVTKIds),e.VBOBuildString=g}e.VBOBuildTime.modified()},t.getAllocatedGPUMemoryInBytes=
()=>{let a=0;return e.primitives.forEach(s=>{a+=s.getAllocatedGPUMemoryInBytes()}),a},t.releaseGraphicsResources=a=>bf(t,
e,a),t.delete=pt(()=>t.releaseGraphicsResources(),t.delete)}var r2={context:null,VBOBuildTime:0,VBOBuildString:null,primitives:null,
primTypes:null,shaderRebuildString:null,tmpMat4:null,ambientColor:[],diffuseColor:[],specularColor:[],lightColor:[],lightDirection:[],
lastHaveSeenDepthRequest:!1,haveSeenDepthRequest:!1,lastSelectionState:he.MIN_KNOWN_PASS-1,selectionStateChanged:null,selectionWebGLIdsToVTKIds:null,
pointPicking:!1,lastForceFlatten:!1};function n2(t,e,r={}){Object.assign(e,r2,r),we.extend(t,e,r),Ia.implementReplaceShaderCoincidentOffset(
t,e,r),Ia.implementBuildShadersWithReplacements(t,e,r),e.primitives=[],e.activePrimitiveIndices=[],e.primTypes=oe,e.tmpMat3=
ce.identity(new Float64Array(9)),e.tmpMat4=_.identity(new Float64Array(16));for(let n=oe.Start;n<oe.End;n++)e.primitives[n]=
Qt.newInstance(),e.primitives[n].setPrimitiveType(n),e.primitives[n].set({lastLightComplexity:0,lastLightCount:0,lastSelectionPass:!1},
!0);Te(t,e,["context"]),e.VBOBuildTime={},xe(e.VBOBuildTime,{mtime:0}),e.selectionStateChanged={},xe(e.selectionStateChanged,
{mtime:0}),t2(t,e)}var a2=pe(n2,"vtkOpenGLPolyDataMapper");Oe("vtkMapper",a2);var s2="WebGL",cn=Object.create(null);function Pa(t,e){cn[t]=e}function i2(){return Object.keys(cn)}function sc(t,e={}){
return cn[t]&&cn[t](e)}function o2(t,e){e.classHierarchy.push("vtkRenderWindow"),t.addRenderer=r=>{t.hasRenderer(r)||(r.
setRenderWindow(t),e.renderers.push(r),t.modified())},t.removeRenderer=r=>{e.renderers=e.renderers.filter(n=>n!==r),t.modified()},
t.hasRenderer=r=>e.renderers.indexOf(r)!==-1,t.newAPISpecificView=(r,n={})=>sc(r||e.defaultViewAPI,n),t.addView=r=>{t.hasView(
r)||(r.setRenderable(t),e._views.push(r),t.modified())},t.removeView=r=>{e._views=e._views.filter(n=>n!==r),t.modified()},
t.hasView=r=>e._views.indexOf(r)!==-1,t.preRender=()=>{e.renderers.forEach(r=>{r.isActiveCameraCreated()||r.resetCamera()})},
t.render=()=>{t.preRender(),e.interactor?e.interactor.render():e._views.forEach(r=>r.traverseAllPasses())},t.getStatistics=
()=>{let r={propCount:0,invisiblePropCount:0,gpuMemoryMB:0};return e._views.forEach(n=>{n.getGraphicsMemoryInfo&&(r.gpuMemoryMB+=
n.getGraphicsMemoryInfo()/1e6)}),e.renderers.forEach(n=>{let a=n.getViewProps(),s=e._views[0].getViewNodeFor(n);a.forEach(
i=>{if(i.getVisibility()){r.propCount+=1;let o=i.getMapper&&i.getMapper();if(o&&o.getPrimitiveCount){let f=s.getViewNodeFor(
o);if(f){f.getAllocatedGPUMemoryInBytes&&(r.gpuMemoryMB+=f.getAllocatedGPUMemoryInBytes()/1e6);let c=o.getPrimitiveCount();
Object.keys(c).forEach(u=>{r[u]||(r[u]=0),r[u]+=c[u]})}}}else r.invisiblePropCount+=1})}),r.str=Object.keys(r).map(n=>`${n}\
: ${r[n]}`).join(`
`),r},t.captureImages=(r="image/png",n={})=>(E.setImmediate(t.render),e._views.map(a=>a.captureNextImage?a.captureNextImage(
r,n):void 0).filter(a=>!!a)),t.addRenderWindow=r=>e.childRenderWindows.includes(r)?!1:(e.childRenderWindows.push(r),t.modified(),
!0),t.removeRenderWindow=r=>{let n=e.childRenderWindows.findIndex(a=>a===r);return n<0?!1:(e.childRenderWindows.splice(n,
1),t.modified(),!0)}}var f2={defaultViewAPI:s2,renderers:[],views:[],interactor:null,neverRendered:!0,numberOfLayers:1,childRenderWindows:[]};
function ic(t,e,r={}){Object.assign(e,f2,r),E.obj(t,e),E.setGet(t,e,["interactor","numberOfLayers","_views","defaultView\
API"]),E.get(t,e,["neverRendered"]),E.getArray(t,e,["renderers","childRenderWindows"]),E.moveToProtected(t,e,["views"]),
E.event(t,e,"completion"),o2(t,e)}var c2=E.newInstance(ic,"vtkRenderWindow"),oc={newInstance:c2,extend:ic,registerViewConstructor:Pa,
listViewAPIs:i2,newAPISpecificView:sc};function u2(t,e){e.classHierarchy.push("vtkRenderPass"),t.getOperation=()=>e.currentOperation,t.setCurrentOperation=r=>{
e.currentOperation=r,e.currentTraverseOperation=`traverse${E.capitalize(e.currentOperation)}`},t.getTraverseOperation=()=>e.
currentTraverseOperation,t.getCaptureDelegateOutput=()=>!1,t.traverse=(r,n=null)=>{e.deleted||(e._currentParent=n,e.preDelegateOperations.
forEach(a=>{t.setCurrentOperation(a),r.traverse(t)}),e.delegates.forEach(a=>{a.traverse(r,t)}),e.postDelegateOperations.
forEach(a=>{t.setCurrentOperation(a),r.traverse(t)}))},t.releaseGraphicsResources=r=>{e.delegates.filter(n=>!n.isDeleted()).
forEach(n=>n.releaseGraphicsResources?.(r))}}var g2={delegates:[],currentOperation:null,preDelegateOperations:[],postDelegateOperations:[],
currentParent:null};function fc(t,e,r={}){Object.assign(e,g2,r),E.obj(t,e),E.get(t,e,["currentOperation"]),E.setGet(t,e,
["delegates","_currentParent","preDelegateOperations","postDelegateOperations"]),E.moveToProtected(t,e,["currentParent"]),
u2(t,e)}var h2=E.newInstance(fc,"vtkRenderPass"),dt={newInstance:h2,extend:fc};function l2(t,e){e.classHierarchy.push("vtkFramebuffer");function r(){e.ownedColorBuffer&&(e._openGLRenderWindow&&!e._openGLRenderWindow.
isDeleted()?e.ownedColorBuffer.releaseGraphicsResources(e._openGLRenderWindow):e.context?.deleteTexture(e.ownedColorBuffer.
getHandle()),e.ownedColorBuffer.delete(),e.ownedColorBuffer=null)}function n(){r(),e.depthTexture&&(e.context?.deleteRenderbuffer(
e.depthTexture),e.depthTexture=null),e.colorBuffers=[]}t.getBothMode=()=>e.context.FRAMEBUFFER,t.saveCurrentBindingsAndBuffers=
a=>{let s=typeof a<"u"?a:t.getBothMode();t.saveCurrentBindings(s),t.saveCurrentBuffers(s)},t.saveCurrentBindings=a=>{if(!e.
context){X("you must set the OpenGLRenderWindow before calling saveCurrentBindings");return}e.previousDrawBinding=e.context.
getParameter(e.context.FRAMEBUFFER_BINDING),e.previousActiveFramebuffer=e._openGLRenderWindow.getActiveFramebuffer()},t.
saveCurrentBuffers=a=>{},t.restorePreviousBindingsAndBuffers=a=>{let s=typeof a<"u"?a:t.getBothMode();t.restorePreviousBindings(
s),t.restorePreviousBuffers(s)},t.restorePreviousBindings=a=>{if(!e.context){X("you must set the OpenGLRenderWindow befo\
re calling restorePreviousBindings");return}let s=e.context;s.bindFramebuffer(s.FRAMEBUFFER,e.previousDrawBinding),e._openGLRenderWindow.
setActiveFramebuffer(e.previousActiveFramebuffer)},t.restorePreviousBuffers=a=>{},t.bind=(a=null)=>{let s=a;s===null&&(s=
e.context.FRAMEBUFFER),e.context.bindFramebuffer(s,e.glFramebuffer),e.colorBuffers.forEach(i=>i?.bind()),e._openGLRenderWindow.
setActiveFramebuffer(t)},t.create=(a,s)=>{if(!e.context){X("you must set the OpenGLRenderWindow before calling create");
return}let i=e.context,o=e.glFramebuffer,f=o&&i.getParameter(i.FRAMEBUFFER_BINDING)===o,c=o&&e.previousDrawBinding===o;t.
releaseGraphicsResources(),e.glFramebuffer=i.createFramebuffer(),e.glFramebuffer.width=a,e.glFramebuffer.height=s,c&&(e.
previousDrawBinding=e.glFramebuffer),f&&t.bind()},t.setColorBuffer=(a,s=0)=>{let i=e.context;if(!i){X("you must set the \
OpenGLRenderWindow before calling setColorBuffer");return}e.colorBuffers[s]===e.ownedColorBuffer&&a!==e.ownedColorBuffer&&
r();let o=i.COLOR_ATTACHMENT0;s>0&&(o+=s),e.colorBuffers[s]=a,i.framebufferTexture2D(i.FRAMEBUFFER,o,i.TEXTURE_2D,a.getHandle(),
0)},t.removeColorBuffer=(a=0)=>{let s=e.context;if(!s){X("you must set the OpenGLRenderWindow before calling removeColor\
Buffer");return}e.colorBuffers[a]===e.ownedColorBuffer&&r();let i=s.COLOR_ATTACHMENT0;for(a>0&&(i+=a),s.framebufferTexture2D(
s.FRAMEBUFFER,i,s.TEXTURE_2D,null,0),e.colorBuffers[a]=null;e.colorBuffers.length&&e.colorBuffers[e.colorBuffers.length-
1]==null;)e.colorBuffers.pop()},t.setDepthBuffer=a=>{if(!e.context){X("you must set the OpenGLRenderWindow before callin\
g setDepthBuffer");return}let s=e.context;s.framebufferTexture2D(s.FRAMEBUFFER,s.DEPTH_ATTACHMENT,s.TEXTURE_2D,a.getHandle(),
0)},t.removeDepthBuffer=()=>{if(!e.context){X("you must set the OpenGLRenderWindow before calling removeDepthBuffer");return}
let a=e.context;a.framebufferTexture2D(a.FRAMEBUFFER,a.DEPTH_ATTACHMENT,a.TEXTURE_2D,null,0)},t.getGLFramebuffer=()=>e.glFramebuffer,
t.setOpenGLRenderWindow=a=>{e._openGLRenderWindow!==a&&(t.releaseGraphicsResources(),e._openGLRenderWindow=a,e.context=null,
a&&(e.context=e._openGLRenderWindow.getContext()))},t.releaseGraphicsResources=()=>{n(),e.glFramebuffer&&(e.context?.deleteFramebuffer(
e.glFramebuffer),e.glFramebuffer=null)},t.getSize=()=>e.glFramebuffer==null?null:[e.glFramebuffer.width,e.glFramebuffer.
height],t.populateFramebuffer=()=>{if(!e.context){X("you must set the OpenGLRenderWindow before calling populateFrameBuf\
fer");return}t.bind();let a=e.context;n();let s=Ae.newInstance();s.setOpenGLRenderWindow(e._openGLRenderWindow),s.setMinificationFilter(
tn.LINEAR),s.setMagnificationFilter(tn.LINEAR),s.create2DFromRaw({width:e.glFramebuffer.width,height:e.glFramebuffer.height,
numComps:4,dataType:ee.UNSIGNED_CHAR,data:null}),e.ownedColorBuffer=s,t.setColorBuffer(s),e.depthTexture=a.createRenderbuffer(),
a.bindRenderbuffer(a.RENDERBUFFER,e.depthTexture),a.renderbufferStorage(a.RENDERBUFFER,a.DEPTH_COMPONENT16,e.glFramebuffer.
width,e.glFramebuffer.height),a.framebufferRenderbuffer(a.FRAMEBUFFER,a.DEPTH_ATTACHMENT,a.RENDERBUFFER,e.depthTexture)},
t.delete=pt(t.releaseGraphicsResources,t.delete),t.getColorTexture=()=>e.colorBuffers[0]}var p2={glFramebuffer:null,colorBuffers:null,
ownedColorBuffer:null,depthTexture:null,previousDrawBinding:0,previousReadBinding:0,previousDrawBuffer:0,previousReadBuffer:0,
previousActiveFramebuffer:null};function cc(t,e,r={}){Object.assign(e,p2,r),xe(t,e),e.colorBuffers&&X("you cannot initia\
lize colorBuffers through the constructor. You should call setColorBuffer() instead."),e.colorBuffers=[],tt(t,e,["colorB\
uffers"]),l2(t,e)}var v2=pe(cc,"vtkFramebuffer"),Et={newInstance:v2,extend:cc};var{isVtkObject:T2}=E;function uc(t){let e=[];for(let r=0;r<t.length;r+=t[r]+1)e.push(t[r]);return e}function gc(t){let e=0;
for(let r=0;r<t.length;)r+=t[r]+1,e++;return e}var y2={extractCellSizes:uc,getNumberOfCells:gc};function x2(t,e){e.classHierarchy.
push("vtkCellArray");let r={...t};t.getNumberOfCells=n=>(e.numberOfCells!==void 0&&!n||(e.cellSizes?e.numberOfCells=e.cellSizes.
length:e.numberOfCells=gc(t.getData())),e.numberOfCells),t.getCellSizes=n=>(e.cellSizes!==void 0&&!n||(e.cellSizes=uc(t.
getData())),e.cellSizes),t.resize=n=>{let a=t.getNumberOfTuples();r.resize(n);let s=t.getNumberOfTuples();s<a&&(s===0?(e.
numberOfCells=0,e.cellSizes=[]):(e.numberOfCells=void 0,e.cellSizes=void 0))},t.setData=n=>{r.setData(n,1),e.numberOfCells=
void 0,e.cellSizes=void 0},t.getCell=n=>{let a=n,s=e.values[a++];return e.values.subarray(a,a+s)},t.insertNextCell=n=>{let a;
T2(n)?a=n.getPointsIds():a=n;let s=t.getNumberOfCells(),i=a.length,o=new Array(i+1);o[0]=i;for(let f=0;f<i;++f)o[f+1]=a[f];
return t.insertNextTuples(o),++e.numberOfCells,e.cellSizes!=null&&e.cellSizes.push(a.length),s},t.getMaxCellSize=()=>t.getCellSizes().
reduce((n,a)=>Math.max(n,a),0)}function C2(t){return{empty:!0,numberOfComponents:1,dataType:ee.UNSIGNED_INT,...t}}function hc(t,e,r={}){
Y.extend(t,e,C2(r)),x2(t,e)}var S2=E.newInstance(hc,"vtkCellArray"),Jt={newInstance:S2,extend:hc,...y2};var{Representation:M2}=Ct,{vtkErrorMacro:lc}=E;function d2(t){t.Fragment=N.substitute(t.Fragment,"//VTK::RenderPassFragm\
entShader::Impl",`
      float weight = gl_FragData[0].a * pow(max(1.1 - gl_FragCoord.z, 0.0), 2.0);
      gl_FragData[0] = vec4(gl_FragData[0].rgb*weight, gl_FragData[0].a);
      gl_FragData[1].r = weight;
    `,!1).result}var E2=`//VTK::System::Dec

in vec2 tcoord;

uniform sampler2D translucentRTexture;
uniform sampler2D translucentRGBATexture;

// the output of this shader
//VTK::Output::Dec

void main()
{
  vec4 t1Color = texture(translucentRGBATexture, tcoord);
  float t2Color = texture(translucentRTexture, tcoord).r;
  gl_FragData[0] = vec4(t1Color.rgb/max(t2Color,0.01), 1.0 - t1Color.a);
}
`;function R2(t,e){e.classHierarchy.push("vtkOpenGLOrderIndependentTranslucentPass"),t.createVertexBuffer=()=>{let r=new Float32Array(
[-1,-1,-1,1,-1,-1,-1,1,-1,1,1,-1]),n=new Float32Array([0,0,1,0,0,1,1,1]),a=new Uint16Array([4,0,1,3,2]),s=Y.newInstance(
{numberOfComponents:3,values:r});s.setName("points");let i=Y.newInstance({numberOfComponents:2,values:n});i.setName("tco\
ords");let o=Jt.newInstance({values:a});e.tris.getCABO().createVBO(o,"polys",M2.SURFACE,{points:s,tcoords:i,cellOffset:0,
forceFlatten:!0}),e.VBOBuildTime.modified()},t.createFramebuffer=r=>{let n=r.getSize(),a=r.getContext();e.framebuffer=Et.
newInstance(),e.framebuffer.setOpenGLRenderWindow(r),e.framebuffer.create(...n),e.framebuffer.saveCurrentBindingsAndBuffers(),
e.framebuffer.bind(),e.translucentRGBATexture=Ae.newInstance(),e.translucentRGBATexture.setInternalFormat(a.RGBA16F),e.translucentRGBATexture.
setFormat(a.RGBA),e.translucentRGBATexture.setOpenGLDataType(a.HALF_FLOAT),e.translucentRGBATexture.setOpenGLRenderWindow(
r),e.translucentRGBATexture.create2DFromRaw({width:n[0],height:n[1],numComps:4,dataType:"Float32Array",data:null}),e.translucentRTexture=
Ae.newInstance(),e.translucentRTexture.setInternalFormat(a.R16F),e.translucentRTexture.setFormat(a.RED),e.translucentRTexture.
setOpenGLDataType(a.HALF_FLOAT),e.translucentRTexture.setOpenGLRenderWindow(r),e.translucentRTexture.create2DFromRaw({width:n[0],
height:n[1],numComps:1,dataType:"Float32Array",data:null}),e.translucentZTexture=Ae.newInstance(),e.translucentZTexture.
setOpenGLRenderWindow(r),e.translucentZTexture.createDepthFromRaw({width:n[0],height:n[1],dataType:"Float32Array",data:null}),
e.framebuffer.setColorBuffer(e.translucentRGBATexture,0),e.framebuffer.setColorBuffer(e.translucentRTexture,1),e.framebuffer.
setDepthBuffer(e.translucentZTexture)},t.createCopyShader=r=>{e.copyShader=r.getShaderCache().readyShaderProgramArray(["\
//VTK::System::Dec","attribute vec4 vertexDC;","attribute vec2 tcoordTC;","varying vec2 tcoord;","void main() { tcoord =\
 tcoordTC; gl_Position = vertexDC; }"].join(`
`),E2,"")},t.createVBO=r=>{let n=r.getContext();e.tris.setOpenGLRenderWindow(r),t.createVertexBuffer();let a=e.copyShader;
e.tris.getCABO().bind(),e.copyVAO.addAttributeArray(a,e.tris.getCABO(),"vertexDC",e.tris.getCABO().getVertexOffset(),e.tris.
getCABO().getStride(),n.FLOAT,3,n.FALSE)||lc("Error setting vertexDC in copy shader VAO."),e.copyVAO.addAttributeArray(a,
e.tris.getCABO(),"tcoordTC",e.tris.getCABO().getTCoordOffset(),e.tris.getCABO().getStride(),n.FLOAT,2,n.FALSE)||lc("Erro\
r setting vertexDC in copy shader VAO.")},t.traverse=(r,n,a)=>{if(e.deleted)return;let s=r.getSize(),i=r.getContext();if(e.
_supported=!1,n.getSelector()||!i||!i.getExtension("EXT_color_buffer_half_float")&&!i.getExtension("EXT_color_buffer_flo\
at")){t.setCurrentOperation("translucentPass"),n.traverse(t);return}if(e._supported=!0,e.framebuffer===null)t.createFramebuffer(
r);else{let u=e.framebuffer.getSize();u===null||u[0]!==s[0]||u[1]!==s[1]?(e.framebuffer.releaseGraphicsResources(),e.translucentRGBATexture.
releaseGraphicsResources(r),e.translucentRTexture.releaseGraphicsResources(r),e.translucentZTexture.releaseGraphicsResources(
r),t.createFramebuffer(r)):(e.framebuffer.saveCurrentBindingsAndBuffers(),e.framebuffer.bind())}i.drawBuffers([i.COLOR_ATTACHMENT0]),
i.clearBufferfv(i.COLOR,0,[0,0,0,0]),i.clearBufferfv(i.DEPTH,0,[1]),i.colorMask(!1,!1,!1,!1),a.getOpaqueActorCount()>0&&
(a.setCurrentOperation("opaqueZBufferPass"),n.traverse(a)),i.colorMask(!0,!0,!0,!0),i.drawBuffers([i.COLOR_ATTACHMENT0,i.
COLOR_ATTACHMENT1]),i.viewport(0,0,s[0],s[1]),i.scissor(0,0,s[0],s[1]),i.clearBufferfv(i.COLOR,0,[0,0,0,1]),i.clearBufferfv(
i.COLOR,1,[0,0,0,0]),i.enable(i.DEPTH_TEST),i.enable(i.BLEND),i.blendFuncSeparate(i.ONE,i.ONE,i.ZERO,i.ONE_MINUS_SRC_ALPHA),
t.setCurrentOperation("translucentPass"),n.traverse(t),i.drawBuffers([i.NONE]),e.framebuffer.restorePreviousBindingsAndBuffers(),
e.copyShader===null?t.createCopyShader(r):r.getShaderCache().readyShaderProgram(e.copyShader),e.copyVAO||(e.copyVAO=sn.newInstance(),
e.copyVAO.setOpenGLRenderWindow(r)),e.copyVAO.bind(),e.VBOBuildTime.getMTime()<t.getMTime()&&t.createVBO(r);let o=i.isEnabled(
i.CULL_FACE),f=o?i.getParameter(i.CULL_FACE_MODE):null;r.disableCullFace(),i.blendFuncSeparate(i.SRC_ALPHA,i.ONE_MINUS_SRC_ALPHA,
i.ONE,i.ONE_MINUS_SRC_ALPHA),i.depthMask(!1),i.depthFunc(i.ALWAYS),i.viewport(0,0,s[0],s[1]),i.scissor(0,0,s[0],s[1]),e.
translucentRGBATexture.activate(),e.copyShader.setUniformi("translucentRGBATexture",e.translucentRGBATexture.getTextureUnit()),
e.translucentRTexture.activate(),e.copyShader.setUniformi("translucentRTexture",e.translucentRTexture.getTextureUnit()),
i.drawArrays(i.TRIANGLES,0,e.tris.getCABO().getElementCount()),i.depthMask(!0),i.depthFunc(i.LEQUAL),o&&(r.enableCullFace(),
r.setCullFaceMode(f)),e.translucentRGBATexture.deactivate(),e.translucentRTexture.deactivate();let c=n.getTiledSizeAndOrigin();
i.scissor(c.lowerLeftU,c.lowerLeftV,c.usize,c.vsize),i.viewport(c.lowerLeftU,c.lowerLeftV,c.usize,c.vsize)},t.getShaderReplacement=
()=>e._supported?d2:null,t.releaseGraphicsResources=E.chain(r=>{e.framebuffer&&(e.framebuffer.releaseGraphicsResources(r),
e.framebuffer=null),e.translucentRGBATexture&&(e.translucentRGBATexture.releaseGraphicsResources(r),e.translucentRGBATexture=
null),e.translucentRTexture&&(e.translucentRTexture.releaseGraphicsResources(r),e.translucentRTexture=null),e.translucentZTexture&&
(e.translucentZTexture.releaseGraphicsResources(r),e.translucentZTexture=null),e.copyVAO&&(e.copyVAO.releaseGraphicsResources(
r),e.copyVAO=null),e.copyShader=null,e.tris.releaseGraphicsResources(r),t.modified()},t.releaseGraphicsResources)}var w2={
framebuffer:null,copyShader:null,tris:null};function pc(t,e,r={}){Object.assign(e,w2,r),dt.extend(t,e,r),e.VBOBuildTime=
{},E.obj(e.VBOBuildTime,{mtime:0}),e.tris=Qt.newInstance(),E.get(t,e,["framebuffer"]),R2(t,e)}var O2=E.newInstance(pc,"v\
tkOpenGLOrderIndependentTranslucentPass"),vc={newInstance:O2,extend:pc};function L2(t,e){e.classHierarchy.push("vtkForwardPass"),t.traverse=(r,n=null)=>{if(e.deleted)return;e._currentParent=n,
t.setCurrentOperation("buildPass"),r.traverse(t);let a=r.getRenderable().getNumberOfLayers(),s=r.getRenderable().getRenderersByReference();
for(let i=0;i<a;i++)for(let o=0;o<s.length;o++){let f=s[o];if(f.getDraw()&&f.getLayer()===i){let c=r.getViewNodeFor(f);if(e.
opaqueActorCount=0,e.translucentActorCount=0,e.volumeCount=0,e.overlayActorCount=0,t.setCurrentOperation("queryPass"),c.
traverse(t),(e.opaqueActorCount>0||e.translucentActorCount>0)&&e.volumeCount>0||e.depthRequested){let u=r.getFramebufferSize();
e.framebuffer===null&&(e.framebuffer=Et.newInstance()),e.framebuffer.setOpenGLRenderWindow(r),e.framebuffer.saveCurrentBindingsAndBuffers();
let h=e.framebuffer.getSize();(h===null||h[0]!==u[0]||h[1]!==u[1])&&(e.framebuffer.create(u[0],u[1]),e.framebuffer.populateFramebuffer()),
e.framebuffer.bind(),t.setCurrentOperation("zBufferPass"),c.traverse(t),e.framebuffer.restorePreviousBindingsAndBuffers(),
e.depthRequested=!1}t.setCurrentOperation("cameraPass"),c.traverse(t),e.opaqueActorCount>0&&(t.setCurrentOperation("opaq\
uePass"),c.traverse(t)),e.translucentActorCount>0&&(e.translucentPass||(e.translucentPass=vc.newInstance()),e.translucentPass.
traverse(r,c,t)),e.volumeCount>0&&(t.setCurrentOperation("volumePass"),c.traverse(t)),e.overlayActorCount>0&&(t.setCurrentOperation(
"overlayPass"),c.traverse(t))}}},t.releaseGraphicsResources=E.chain(r=>{e.framebuffer&&(e.framebuffer.releaseGraphicsResources(),
e.framebuffer=null),e.translucentPass?.releaseGraphicsResources(r)},t.releaseGraphicsResources),t.getZBufferTexture=()=>e.
framebuffer?e.framebuffer.getColorTexture():null,t.requestDepth=()=>{e.depthRequested=!0},t.incrementOpaqueActorCount=()=>e.
opaqueActorCount++,t.incrementTranslucentActorCount=()=>e.translucentActorCount++,t.incrementVolumeCount=()=>e.volumeCount++,
t.incrementOverlayActorCount=()=>e.overlayActorCount++}var D2={opaqueActorCount:0,translucentActorCount:0,volumeCount:0,
overlayActorCount:0,framebuffer:null,depthRequested:!1};function Tc(t,e,r={}){Object.assign(e,D2,r),dt.extend(t,e,r),E.get(
t,e,["framebuffer","opaqueActorCount","translucentActorCount","volumeCount"]),L2(t,e)}var _2=E.newInstance(Tc,"vtkForwar\
dPass"),yc={newInstance:_2,extend:Tc};var m2={GLOBALIDS:0,PEDIGREEIDS:1,VALUES:2,INDICES:3,FRUSTUM:4,LOCATIONS:5,THRESHOLDS:6,BLOCKS:7,QUERY:8},F2={CELL:0,POINT:1,
FIELD:2,VERTEX:3,EDGE:4,ROW:5},xc={SelectionContent:m2,SelectionField:F2};function N2(t,e){e.classHierarchy.push("vtkSelectionNode"),t.getBounds=()=>e.points.getBounds()}var V2={contentType:-1,fieldType:-1,
properties:null,selectionList:[]};function Cc(t,e,r={}){Object.assign(e,V2,r),E.obj(t,e),e.properties={},E.setGet(t,e,["\
contentType","fieldType","properties","selectionList"]),N2(t,e)}var B2=E.newInstance(Cc,"vtkSelectionNode"),ba={newInstance:B2,
extend:Cc,...xc};var{FieldAssociations:U2}=_e;function G2(t,e){e.classHierarchy.push("vtkHardwareSelector"),t.getSourceDataAsync=async(r,n,a,s,i)=>{},
t.selectAsync=async(r,n,a,s,i)=>{let o=await t.getSourceDataAsync(r,n,a,s,i);return o?o.generateSelection(n,a,s,i):[]}}var k2={
fieldAssociation:U2.FIELD_ASSOCIATION_CELLS,captureZValues:!1};function Sc(t,e,r={}){Object.assign(e,k2,r),E.obj(t,e),E.
setGet(t,e,["fieldAssociation","captureZValues"]),G2(t,e)}var z2=E.newInstance(Sc,"vtkHardwareSelector"),Mc={newInstance:z2,
extend:Sc};var{PassTypes:re}=Wa,{SelectionContent:H2,SelectionField:dc}=ba,{FieldAssociations:Pt}=_e,{vtkErrorMacro:Ec,vtkDebugMacro:It}=E,
Ie=1;function Rc(t){return`${t.propID} ${t.compositeID}`}function wc(t,e,r,n){return r?r[(e*(n[2]-n[0]+1)+t)*4+3]:0}function je(t,e,r,n,a=null){
if(!r)return 0;let s=(e*(n[2]-n[0]+1)+t)*4,i=r[s],o=r[s+1];return(r[s+2]*256+o)*256+i}function Oc(t,e){let r=e;return r<<=
24,r|=t,r}function Rt(t,e,r,n){let a=r<0?0:r;if(a===0){if(n[0]=e[0],n[1]=e[1],e[0]<t.area[0]||e[0]>t.area[2]||e[1]<t.area[1]||
e[1]>t.area[3])return null;let f=[e[0]-t.area[0],e[1]-t.area[1]],c=je(f[0],f[1],t.pixBuffer[re.ACTOR_PASS],t.area,"getPi\
xelInformationWithData1");if(c<=0||c-Ie>=t.props.length)return null;let u={};u.valid=!0,u.propID=c-Ie,u.prop=t.props[u.propID];
let h=je(f[0],f[1],t.pixBuffer[re.COMPOSITE_INDEX_PASS],t.area,"getPixelInformationWithData2");if((h<0||h>16777215)&&(h=
0),u.compositeID=h-Ie,t.captureZValues){let l=(f[1]*(t.area[2]-t.area[0]+1)+f[0])*4;u.zValue=(256*t.zBuffer[l]+t.zBuffer[l+
1])/65535,u.displayPosition=e}return t.pixBuffer[re.ID_LOW24]&&wc(f[0],f[1],t.pixBuffer[re.ID_LOW24],t.area)===0||(u.attributeID=
Oc(je(f[0],f[1],t.pixBuffer[re.ID_LOW24],t.area,"getPixelInformationWithData3"),je(f[0],f[1],t.pixBuffer[re.ID_HIGH24],t.
area,"getPixelInformationWithData4"),0)),u}let s=[e[0],e[1]],i=[0,0],o=Rt(t,e,0,n);if(o&&o.valid)return o;for(let f=1;f<
a;++f){for(let c=s[1]>f?s[1]-f:0;c<=s[1]+f;++c)if(i[1]=c,s[0]>=f&&(i[0]=s[0]-f,o=Rt(t,i,0,n),o&&o.valid)||(i[0]=s[0]+f,o=
Rt(t,i,0,n),o&&o.valid))return o;for(let c=s[0]>=f?s[0]-(f-1):0;c<=s[0]+(f-1);++c)if(i[0]=c,s[1]>=f&&(i[1]=s[1]-f,o=Rt(t,
i,0,n),o&&o.valid)||(i[1]=s[1]+f,o=Rt(t,i,0,n),o&&o.valid))return o}return n[0]=e[0],n[1]=e[1],null}function Lc(t,e,r,n,a){
let s=[],i=0;return e.forEach((o,f)=>{let c=ba.newInstance();switch(c.setContentType(H2.INDICES),t){case Pt.FIELD_ASSOCIATION_CELLS:
c.setFieldType(dc.CELL);break;case Pt.FIELD_ASSOCIATION_POINTS:c.setFieldType(dc.POINT);break;default:Ec("Unknown field \
association")}c.getProperties().propID=o.info.propID,c.getProperties().prop=o.info.prop,c.getProperties().compositeID=o.
info.compositeID,c.getProperties().attributeID=o.info.attributeID,c.getProperties().pixelCount=o.pixelCount,r&&(c.getProperties().
displayPosition=[o.info.displayPosition[0],o.info.displayPosition[1],o.info.zValue],c.getProperties().worldPosition=a.displayToWorld(
o.info.displayPosition[0],o.info.displayPosition[1],o.info.zValue,n)),c.setSelectionList(o.attributeIDs),s[i]=c,i++}),s}
function W2(t,e,r,n,a){let s=Math.floor(e),i=Math.floor(r),o=Math.floor(n),f=Math.floor(a),c=new Map,u=[0,0];for(let h=i;h<=
f;h++)for(let l=s;l<=o;l++){let p=Rt(t,[l,h],0,u);if(p&&p.valid){let x=Rc(p);if(!c.has(x))c.set(x,{info:p,pixelCount:1,attributeIDs:[
p.attributeID]});else{let g=c.get(x);g.pixelCount++,t.captureZValues&&p.zValue<g.info.zValue&&(g.info=p),g.attributeIDs.
indexOf(p.attributeID)===-1&&g.attributeIDs.push(p.attributeID)}}}return Lc(t.fieldAssociation,c,t.captureZValues,t.renderer,
t.openGLRenderWindow)}function A2(t,e){e.classHierarchy.push("vtkOpenGLHardwareSelector"),t.releasePixBuffers=()=>{e.rawPixBuffer=
[],e.pixBuffer=[],e.zBuffer=null},t.releaseGraphicsResources=()=>{t.releasePixBuffers(),e.framebuffer?.delete(),e.framebuffer=
null},t.beginSelection=()=>{e._openGLRenderer=e._openGLRenderWindow.getViewNodeFor(e._renderer,e._openGLRenderer),e.maxAttributeId=
0;let n=e._openGLRenderWindow.getSize();if(!e.framebuffer)e.framebuffer=Et.newInstance(),e.framebuffer.setOpenGLRenderWindow(
e._openGLRenderWindow),e.framebuffer.saveCurrentBindingsAndBuffers(),e.framebuffer.create(n[0],n[1]),e.framebuffer.populateFramebuffer();else{
e.framebuffer.setOpenGLRenderWindow(e._openGLRenderWindow),e.framebuffer.saveCurrentBindingsAndBuffers();let a=e.framebuffer.
getSize();!a||a[0]!==n[0]||a[1]!==n[1]?(e.framebuffer.create(n[0],n[1]),e.framebuffer.populateFramebuffer()):e.framebuffer.
bind()}if(e._openGLRenderer.clear(),e._openGLRenderer.setSelector(t),e.hitProps={},e.propPixels={},e.props=[],t.releasePixBuffers(),
e.fieldAssociation===Pt.FIELD_ASSOCIATION_POINTS){let a=e._openGLRenderWindow.getContext(),s=a.isEnabled(a.BLEND);a.disable(
a.BLEND),e._openGLRenderWindow.traverseAllPasses(),s&&a.enable(a.BLEND)}},t.endSelection=()=>{e.hitProps={},e._openGLRenderer.
setSelector(null),e.framebuffer.restorePreviousBindingsAndBuffers()},t.preCapturePass=()=>{let n=e._openGLRenderWindow.getContext();
e.originalBlending=n.isEnabled(n.BLEND),n.disable(n.BLEND)},t.postCapturePass=()=>{let n=e._openGLRenderWindow.getContext();
e.originalBlending&&n.enable(n.BLEND)},t.select=()=>{let n=null;return t.captureBuffers()&&(n=t.generateSelection(e.area[0],
e.area[1],e.area[2],e.area[3]),t.releasePixBuffers()),n},t.getSourceDataAsync=async(n,a,s,i,o)=>{if(e._renderer=n,a===void 0){
let c=e._openGLRenderWindow.getSize();t.setArea(0,0,c[0]-1,c[1]-1)}else t.setArea(a,s,i,o);if(!t.captureBuffers())return!1;
let f={area:[...e.area],pixBuffer:[...e.pixBuffer],captureZValues:e.captureZValues,zBuffer:e.zBuffer,props:[...e.props],
fieldAssociation:e.fieldAssociation,renderer:n,openGLRenderWindow:e._openGLRenderWindow};return f.generateSelection=(...c)=>W2(
f,...c),f},t.captureBuffers=()=>{if(!e._renderer||!e._openGLRenderWindow)return Ec("Renderer and view must be set before\
 calling Select."),!1;e._openGLRenderer=e._openGLRenderWindow.getViewNodeFor(e._renderer,e._openGLRenderer),e._openGLRenderWindow.
getRenderable().preRender(),t.invokeEvent({type:"StartEvent"}),e.originalBackground=e._renderer.getBackgroundByReference(),
e._renderer.setBackground(0,0,0,0);let n=e._openGLRenderWindow.getRenderPasses();t.beginSelection();let a=[];for(e.currentPass=
re.MIN_KNOWN_PASS;e.currentPass<=re.MAX_KNOWN_PASS;e.currentPass++)t.passRequired(e.currentPass)&&(t.preCapturePass(e.currentPass),
e.captureZValues&&e.currentPass===re.ACTOR_PASS&&typeof n[0].requestDepth=="function"&&typeof n[0].getFramebuffer=="func\
tion"&&n[0].requestDepth(),e._openGLRenderWindow.traverseAllPasses(),t.postCapturePass(e.currentPass),t.savePixelBuffer(
e.currentPass),a.push(e.currentPass));return a.forEach(s=>{e.currentPass=s,t.processPixelBuffers()}),e.currentPass=re.MAX_KNOWN_PASS,
t.endSelection(),e._renderer.setBackground(e.originalBackground),t.invokeEvent({type:"EndEvent"}),!0},t.processPixelBuffers=
()=>{e.props.forEach((n,a)=>{t.isPropHit(a)&&n.processSelectorPixelBuffers(t,e.propPixels[a])})},t.passRequired=n=>{if(n===
re.ID_HIGH24){if(e.fieldAssociation===Pt.FIELD_ASSOCIATION_POINTS)return e.maximumPointId>16777215;if(e.fieldAssociation===
Pt.FIELD_ASSOCIATION_CELLS)return e.maximumCellId>16777215}return!0},t.savePixelBuffer=n=>{if(e.pixBuffer[n]=e._openGLRenderWindow.
getPixelData(e.area[0],e.area[1],e.area[2],e.area[3]),!e.rawPixBuffer[n]){let a=(e.area[2]-e.area[0]+1)*(e.area[3]-e.area[1]+
1)*4;e.rawPixBuffer[n]=new Uint8Array(a),e.rawPixBuffer[n].set(e.pixBuffer[n])}if(n===re.ACTOR_PASS){if(e.captureZValues){
let a=e._openGLRenderWindow.getRenderPasses();if(typeof a[0].requestDepth=="function"&&typeof a[0].getFramebuffer=="func\
tion"){let s=a[0].getFramebuffer();s.saveCurrentBindingsAndBuffers(),s.bind(),e.zBuffer=e._openGLRenderWindow.getPixelData(
e.area[0],e.area[1],e.area[2],e.area[3]),s.restorePreviousBindingsAndBuffers()}}t.buildPropHitList(e.rawPixBuffer[n])}},
t.buildPropHitList=n=>{let a=0;for(let s=0;s<=e.area[3]-e.area[1];s++)for(let i=0;i<=e.area[2]-e.area[0];i++){let o=je(i,
s,n,e.area,"buildPropHitList");o>0&&(o--,o in e.hitProps||(e.hitProps[o]=!0,e.propPixels[o]=[]),e.propPixels[o].push(a*4)),
++a}},t.renderProp=n=>{e.currentPass===re.ACTOR_PASS&&(t.setPropColorValueFromInt(e.props.length+Ie),e.props.push(n))},t.
renderCompositeIndex=n=>{e.currentPass===re.COMPOSITE_INDEX_PASS&&t.setPropColorValueFromInt(n+Ie)},t.renderAttributeId=
n=>{n<0||(e.maxAttributeId=n>e.maxAttributeId?n:e.maxAttributeId)},t.passTypeToString=n=>E.enumToString(re,n),t.isPropHit=
n=>!!e.hitProps[n],t.setPropColorValueFromInt=n=>{e.propColorValue[0]=n%256/255,e.propColorValue[1]=Math.floor(n/256)%256/
255,e.propColorValue[2]=Math.floor(n/65536)%256/255},t.delete=E.chain(t.releaseGraphicsResources,t.delete),t.getPixelInformation=
(n,a,s)=>{let i=a<0?0:a;if(It("getPixelInformation called",i),i===0){if(s[0]=n[0],s[1]=n[1],n[0]<e.area[0]||n[0]>e.area[2]||
n[1]<e.area[1]||n[1]>e.area[3])return null;It(n),It(e.area);let u=[n[0]-e.area[0],n[1]-e.area[1]];It("adjusted displayPo\
sition",u);let h=je(u[0],u[1],e.pixBuffer[re.ACTOR_PASS],e.area,"getPixelInformation");if(It("actorid",h),h<=0||h-Ie>=e.
props.length)return null;let l={};l.valid=!0,l.propID=h-Ie,l.prop=e.props[l.propID];let p=je(u[0],u[1],e.pixBuffer[re.COMPOSITE_INDEX_PASS],
e.area,"getPixelInformation2");if((p<0||p>16777215)&&(p=0),l.compositeID=p-Ie,e.captureZValues){let x=(u[1]*(e.area[2]-e.
area[0]+1)+u[0])*4;l.zValue=(256*e.zBuffer[x]+e.zBuffer[x+1])/65535,l.displayPosition=n}return e.pixBuffer[re.ID_LOW24]&&
wc(u[0],u[1],e.pixBuffer[re.ID_LOW24],e.area)===0||(l.attributeID=Oc(je(u[0],u[1],e.pixBuffer[re.ID_LOW24],e.area,"getPi\
xelInformation3"),je(u[0],u[1],e.pixBuffer[re.ID_HIGH24],e.area,"getPixelInformation4"))),l}let o=[n[0],n[1]],f=[0,0],c=t.
getPixelInformation(n,0,s);if(c&&c.valid)return c;for(let u=1;u<i;++u){for(let h=o[1]>u?o[1]-u:0;h<=o[1]+u;++h)if(f[1]=h,
o[0]>=u&&(f[0]=o[0]-u,c=t.getPixelInformation(f,0,s),c&&c.valid)||(f[0]=o[0]+u,c=t.getPixelInformation(f,0,s),c&&c.valid))
return c;for(let h=o[0]>=u?o[0]-(u-1):0;h<=o[0]+(u-1);++h)if(f[0]=h,o[1]>=u&&(f[1]=o[1]-u,c=t.getPixelInformation(f,0,s),
c&&c.valid)||(f[1]=o[1]+u,c=t.getPixelInformation(f,0,s),c&&c.valid))return c}return s[0]=n[0],s[1]=n[1],null},t.generateSelection=
(n,a,s,i)=>{let o=Math.floor(n),f=Math.floor(a),c=Math.floor(s),u=Math.floor(i),h=new Map,l=[0,0];for(let p=f;p<=u;p++)for(let x=o;x<=
c;x++){let g=[x,p],y=t.getPixelInformation(g,0,l);if(y&&y.valid){let C=Rc(y);if(!h.has(C))h.set(C,{info:y,pixelCount:1,attributeIDs:[
y.attributeID]});else{let M=h.get(C);M.pixelCount++,e.captureZValues&&y.zValue<M.info.zValue&&(M.info=y),M.attributeIDs.
indexOf(y.attributeID)===-1&&M.attributeIDs.push(y.attributeID)}}}return Lc(e.fieldAssociation,h,e.captureZValues,e._renderer,
e._openGLRenderWindow)},t.getRawPixelBuffer=n=>e.rawPixBuffer[n],t.getPixelBuffer=n=>e.pixBuffer[n],t.attach=(n,a)=>{e._openGLRenderWindow=
n,e._renderer=a};let r=t.setArea;t.setArea=(...n)=>r(...n)?(e.area[0]=Math.floor(e.area[0]),e.area[1]=Math.floor(e.area[1]),
e.area[2]=Math.floor(e.area[2]),e.area[3]=Math.floor(e.area[3]),!0):!1}var j2={area:void 0,currentPass:-1,propColorValue:null,
props:null,maximumPointId:0,maximumCellId:0,idOffset:1};function Dc(t,e,r={}){Object.assign(e,j2,r),Mc.extend(t,e,r),e.propColorValue=
[0,0,0],e.props=[],e.area||(e.area=[0,0,0,0]),E.setGetArray(t,e,["area"],4),E.setGet(t,e,["_renderer","currentPass","_op\
enGLRenderWindow","maximumPointId","maximumCellId"]),E.setGetArray(t,e,["propColorValue"],3),E.moveToProtected(t,e,["ren\
derer","openGLRenderWindow"]),E.event(t,e,"event"),A2(t,e)}var K2=E.newInstance(Dc,"vtkOpenGLHardwareSelector"),es={newInstance:K2,
extend:Dc,...Wa};var Nc=ur(Fc(),1),$2=["lastShaderProgramBound","context","_openGLRenderWindow"];function X2(t,e){e.classHierarchy.push("\
vtkShaderCache"),t.replaceShaderValues=(r,n,a)=>{let s=n;a.length>0&&(s=N.substitute(s,"VSOut","GSOut").result);let i=`#\
version 300 es
#define attribute in
#define textureCube texture
#define texture2D texture
#define textureCubeLod textureLod
#define texture2DLod textureLod
`;s=N.substitute(s,"//VTK::System::Dec",[`${i}
`,"#ifdef GL_FRAGMENT_PRECISION_HIGH","precision highp float;","precision highp int;","#else","precision mediump float;",
"precision mediump int;","#endif"]).result;let o=N.substitute(r,"//VTK::System::Dec",[`${i}
`,"#ifdef GL_FRAGMENT_PRECISION_HIGH","precision highp float;","precision highp int;","#else","precision mediump float;",
"precision mediump int;","#endif"]).result;o=N.substitute(o,"varying","out").result,s=N.substitute(s,"varying","in").result;
let f="",c=0;for(;s.includes(`gl_FragData[${c}]`);)s=N.substitute(s,`gl_FragData\\[${c}\\]`,`fragOutput${c}`).result,f+=
`layout(location = ${c}) out vec4 fragOutput${c};
`,c++;s=N.substitute(s,"//VTK::Output::Dec",f).result;let u=N.substitute(a,"//VTK::System::Dec",i).result;return{VSSource:o,
FSSource:s,GSSource:u}},t.readyShaderProgramArray=(r,n,a)=>{let s=t.replaceShaderValues(r,n,a),i=t.getShaderProgram(s.VSSource,
s.FSSource,s.GSSource);return t.readyShaderProgram(i)},t.readyShaderProgram=r=>!r||!r.getCompiled()&&!r.compileShader()||
!t.bindShaderProgram(r)?null:r,t.getShaderProgram=(r,n,a)=>{let s=`${r}${n}${a}`,i=Nc.default.hash(s);if(!(i in e.shaderPrograms)){
let o=N.newInstance();return o.setContext(e.context),o.getVertexShader().setSource(r),o.getFragmentShader().setSource(n),
a&&o.getGeometryShader().setSource(a),o.setMd5Hash(i),e.shaderPrograms[i]=o,o}return e.shaderPrograms[i]},t.releaseGraphicsResources=
r=>{t.releaseCurrentShaderProgram(),Object.keys(e.shaderPrograms).map(n=>e.shaderPrograms[n]).forEach(n=>n.cleanup()),e.
shaderPrograms={}},t.releaseCurrentShaderProgram=()=>{e.lastShaderProgramBound&&(e.lastShaderProgramBound.cleanup(),e.lastShaderProgramBound=
null)},t.bindShaderProgram=r=>(e.lastShaderProgramBound===r||(e.lastShaderProgramBound&&e.lastShaderProgramBound.release(),
r.bind(),e.lastShaderProgramBound=r),1)}var Y2={lastShaderProgramBound:null,shaderPrograms:null,context:null};function Vc(t,e,r={}){
Object.assign(e,Y2,r),e.shaderPrograms={},E.obj(t,e),E.setGet(t,e,$2),E.moveToProtected(t,e,["openGLRenderWindow"]),X2(t,
e)}var q2=E.newInstance(Vc,"vtkShaderCache"),Bc={newInstance:q2,extend:Vc};var{vtkErrorMacro:Z2}=E;function Q2(t,e){e.classHierarchy.push("vtkOpenGLTextureUnitManager"),t.deleteTable=()=>{for(let r=0;r<
e.numberOfTextureUnits;++r)e.textureUnits[r]===!0&&Z2("some texture units  were not properly released");e.textureUnits=[],
e.numberOfTextureUnits=0},t.setContext=r=>{if(e.context!==r){if(e.context!==0&&t.deleteTable(),e.context=r,e.context){e.
numberOfTextureUnits=r.getParameter(r.MAX_TEXTURE_IMAGE_UNITS);for(let n=0;n<e.numberOfTextureUnits;++n)e.textureUnits[n]=
!1}t.modified()}},t.allocate=()=>{for(let r=0;r<e.numberOfTextureUnits;r++)if(!t.isAllocated(r))return e.textureUnits[r]=
!0,r;return-1},t.allocateUnit=r=>t.isAllocated(r)?-1:(e.textureUnits[r]=!0,r),t.isAllocated=r=>e.textureUnits[r],t.free=
r=>{e.textureUnits[r]=!1},t.freeAll=()=>{for(let r=0;r<e.numberOfTextureUnits;++r)e.textureUnits[r]=!1}}var J2={context:null,
numberOfTextureUnits:0,textureUnits:0};function Uc(t,e,r={}){Object.assign(e,J2,r),E.obj(t,e),e.textureUnits=[],E.get(t,
e,["numberOfTextureUnits"]),E.setGet(t,e,["context"]),Q2(t,e)}var I2=E.newInstance(Uc,"vtkOpenGLTextureUnitManager"),Gc={
newInstance:I2,extend:Uc};function P2(t,e){e.classHierarchy.push("vtkRenderWindowViewNode"),t.getViewNodeFactory=()=>null,t.getAspectRatio=()=>e.size[0]/
e.size[1],t.getAspectRatioForRenderer=r=>{let n=r.getViewportByReference();return e.size[0]*(n[2]-n[0])/((n[3]-n[1])*e.size[1])},
t.isInViewport=(r,n,a)=>{let s=a.getViewportByReference(),i=t.getFramebufferSize();return s[0]*i[0]<=r&&s[2]*i[0]>=r&&s[1]*
i[1]<=n&&s[3]*i[1]>=n},t.getViewportSize=r=>{let n=r.getViewportByReference(),a=t.getFramebufferSize();return[(n[2]-n[0])*
a[0],(n[3]-n[1])*a[1]]},t.getViewportCenter=r=>{let n=t.getViewportSize(r);return[n[0]*.5,n[1]*.5]},t.displayToNormalizedDisplay=
(r,n,a)=>{let s=t.getFramebufferSize();return[r/s[0],n/s[1],a]},t.normalizedDisplayToDisplay=(r,n,a)=>{let s=t.getFramebufferSize();
return[r*s[0],n*s[1],a]},t.worldToView=(r,n,a,s)=>s.worldToView(r,n,a),t.viewToWorld=(r,n,a,s)=>s.viewToWorld(r,n,a),t.worldToDisplay=
(r,n,a,s)=>{let i=s.worldToView(r,n,a),o=t.getViewportSize(s),f=s.viewToProjection(i[0],i[1],i[2],o[0]/o[1]),c=s.projectionToNormalizedDisplay(
f[0],f[1],f[2]);return t.normalizedDisplayToDisplay(c[0],c[1],c[2])},t.displayToWorld=(r,n,a,s)=>{let i=t.displayToNormalizedDisplay(
r,n,a),o=s.normalizedDisplayToProjection(i[0],i[1],i[2]),f=t.getViewportSize(s),c=s.projectionToView(o[0],o[1],o[2],f[0]/
f[1]);return s.viewToWorld(c[0],c[1],c[2])},t.normalizedDisplayToViewport=(r,n,a,s)=>{let i=s.getViewportByReference();i=
t.normalizedDisplayToDisplay(i[0],i[1],0);let o=t.normalizedDisplayToDisplay(r,n,a);return[o[0]-i[0]-.5,o[1]-i[1]-.5,a]},
t.viewportToNormalizedViewport=(r,n,a,s)=>{let i=t.getViewportSize(s);return i&&i[0]!==0&&i[1]!==0?[r/(i[0]-1),n/(i[1]-1),
a]:[r,n,a]},t.normalizedViewportToViewport=(r,n,a,s)=>{let i=t.getViewportSize(s);return[r*(i[0]-1),n*(i[1]-1),a]},t.displayToLocalDisplay=
(r,n,a)=>[r,t.getFramebufferSize()[1]-n-1,a],t.viewportToNormalizedDisplay=(r,n,a,s)=>{let i=s.getViewportByReference();
i=t.normalizedDisplayToDisplay(i[0],i[1],0);let o=r+i[0]+.5,f=n+i[1]+.5;return t.displayToNormalizedDisplay(o,f,a)},t.getComputedDevicePixelRatio=
()=>e.size[0]/t.getContainerSize()[0],t.getContainerSize=()=>{E.vtkErrorMacro("not implemented")},t.getPixelData=(r,n,a,s)=>{
E.vtkErrorMacro("not implemented")},t.createSelector=()=>{E.vtkErrorMacro("not implemented")}}var b2={size:void 0,selector:void 0};
function kc(t,e,r={}){Object.assign(e,b2,r),e.size||(e.size=[300,300]),E.getArray(t,e,["size"],2),E.get(t,e,["selector"]),
we.extend(t,e,r),P2(t,e)}var ey=E.newInstance(kc,"vtkRenderWindowViewNode"),zc={newInstance:ey,extend:kc};function Hc(){let t=new Map,e={apply(a,s,i){return t.has(i[0])?t.get(i[0]):a.apply(s,i)}};function r(a){return{apply(s,i,o){
return t.set(a,o[0]),s.apply(i,o)}}}let n=Object.create(null);return n.getParameter=(a,s,i,o)=>new Proxy(o.bind(a),e),n.
depthMask=(a,s,i,o)=>new Proxy(o.bind(a),r(a.DEPTH_WRITEMASK)),{get(a,s,i){if(s==="__getUnderlyingContext")return()=>a;let o=Reflect.
get(a,s,a);o instanceof Function&&(o=o.bind(a));let f=n[s];return f?f(a,s,i,o):o}}}var{vtkDebugMacro:ty,vtkErrorMacro:ts,vtkWarningMacro:ry}=E,ny={position:"absolute",top:0,left:0,width:"100%",height:"10\
0%"},ay=["activateTexture","deactivateTexture","disableCullFace","enableCullFace","setCullFaceMode","get3DContext","getA\
ctiveFramebuffer","getContext","getDefaultTextureByteSize","getDefaultTextureInternalFormat","getGLInformations","getGra\
phicsMemoryInfo","getGraphicsResourceForObject","getHardwareMaximumLineWidth","getPixelData","getShaderCache","getTextur\
eUnitForTexture","getTextureUnitManager","makeCurrent","releaseGraphicsResources","registerGraphicsResourceUser","unregi\
sterGraphicsResourceUser","restoreContext","setActiveFramebuffer","setContext","setGraphicsResourceForObject"];function Ge(t,e,r,n){
let a=t.getParameter(t.TEXTURE_BINDING_2D),s=t.getParameter(t.FRAMEBUFFER_BINDING),i=t.createFramebuffer(),o=t.createTexture();
t.bindTexture(t.TEXTURE_2D,o),t.texImage2D(t.TEXTURE_2D,0,e,2,2,0,r,n,null),t.bindFramebuffer(t.FRAMEBUFFER,i),t.framebufferTexture2D(
t.FRAMEBUFFER,t.COLOR_ATTACHMENT0,t.TEXTURE_2D,o,0);let f=t.checkFramebufferStatus(t.FRAMEBUFFER);return t.bindFramebuffer(
t.FRAMEBUFFER,s),t.bindTexture(t.TEXTURE_2D,a),t.deleteFramebuffer(i),t.deleteTexture(o),f===t.FRAMEBUFFER_COMPLETE}var un=0,
gn=[];function sy(){un++,gn.forEach(t=>t(un))}function iy(){un--,gn.forEach(t=>t(un))}function oy(t){gn.push(t)}function fy(t){
return gn.pop()}function Wc(t){t.preventDefault()}function cy(t,e){e.classHierarchy.push("vtkOpenGLRenderWindow");let r;
function n(){return r||(r=Hc()),r}t.getViewNodeFactory=()=>e.myFactory,e.manageCanvas&&(e.canvas.addEventListener("webgl\
contextlost",Wc,!1),e.canvas.addEventListener("webglcontextrestored",t.restoreContext,!1));let a=[0,0];function s(){e.renderable&&
e.manageCanvas&&(e.size[0]!==a[0]||e.size[1]!==a[1])&&(a[0]=e.size[0],a[1]=e.size[1],e.canvas.setAttribute("width",e.size[0]),
e.canvas.setAttribute("height",e.size[1])),e.viewStream&&e.viewStream.setSize(e.size[0],e.size[1]),e.manageCanvas&&(e.canvas.
style.display=e.useOffScreen?"none":"block"),e.el&&(e.el.style.cursor=e.cursorVisibility?e.cursor:"none"),e.containerSize=
null}t.onModified(s),t.buildPass=g=>{if(g){if(!e.renderable)return;t.prepareNodes(),t.addMissingNodes(e.renderable.getRenderersByReference()),
t.addMissingNodes(e.renderable.getChildRenderWindowsByReference()),t.removeUnusedNodes(),t.initialize(),e.children.forEach(
y=>{y.setOpenGLRenderWindow?.(t)})}},t.initialize=()=>{if(!e.initialized){if(e.rootOpenGLRenderWindow=t.getLastAncestorOfType(
"vtkOpenGLRenderWindow"),e.rootOpenGLRenderWindow)e.context2D=t.get2DContext();else{e.context=t.get3DContext(),t.resizeFromChildRenderWindows(),
e.context&&sy(),e.textureUnitManager=Gc.newInstance(),e.textureUnitManager.setContext(e.context),e.shaderCache.setContext(
e.context);let g=e.context;g.blendFuncSeparate(g.SRC_ALPHA,g.ONE_MINUS_SRC_ALPHA,g.ONE,g.ONE_MINUS_SRC_ALPHA),g.depthFunc(
g.LEQUAL),g.enable(g.BLEND)}e.initialized=!0}},t.makeCurrent=()=>{e.context.makeCurrent()},t.setContainer=g=>{e.el&&e.el!==
g&&(e.canvas.parentNode!==e.el&&ts("Error: canvas parent node does not match container"),e.el.removeChild(e.canvas),e.el.
contains(e.bgImage)&&e.el.removeChild(e.bgImage)),e.el!==g&&(e.el=g,e.el&&(e.el.appendChild(e.canvas),e.useBackgroundImage&&
e.el.appendChild(e.bgImage)),t.modified())},t.getContainer=()=>e.el,t.getContainerSize=()=>{if(!e.containerSize&&e.el){let{
width:g,height:y}=e.el.getBoundingClientRect();e.containerSize=[g,y]}return e.containerSize||e.size},t.getFramebufferSize=
()=>e.activeFramebuffer?.getSize()||e.size,t.getPixelData=(g,y,C,M)=>{let v=new Uint8Array((C-g+1)*(M-y+1)*4);return e.context.
readPixels(g,y,C-g+1,M-y+1,e.context.RGBA,e.context.UNSIGNED_BYTE,v),v},t.get3DContext=(g={preserveDrawingBuffer:!1,depth:!0,
alpha:!0,powerPreference:"high-performance"})=>{let y=typeof WebGL2RenderingContext<"u"?e.canvas.getContext("webgl2",g):
null;return y&&ty("using WebGL2"),y||ts("no WebGL2 context"),new Proxy(y,n())},t.get2DContext=(g={})=>e.canvas.getContext(
"2d",g),t.restoreContext=()=>{let g=dt.newInstance();g.setCurrentOperation("Release"),g.traverse(t,null)},t.activateTexture=
g=>{let y=e._textureResourceIds.get(g);if(y!==void 0){e.context.activeTexture(e.context.TEXTURE0+y);return}let C=t.getTextureUnitManager().
allocate();if(C<0){ts("Hardware does not support the number of textures defined.");return}e._textureResourceIds.set(g,C),
e.context.activeTexture(e.context.TEXTURE0+C)},t.deactivateTexture=g=>{let y=e._textureResourceIds.get(g);y!==void 0&&(t.
getTextureUnitManager().free(y),e._textureResourceIds.delete(g))},t.getTextureUnitForTexture=g=>{let y=e._textureResourceIds.
get(g);return y!==void 0?y:-1},t.getDefaultTextureByteSize=(g,y=null,C=!1)=>{switch(g){case ee.CHAR:case ee.SIGNED_CHAR:case ee.
UNSIGNED_CHAR:return 1;case y:case C:case ee.UNSIGNED_SHORT:case ee.SHORT:case ee.VOID:return 2;default:return 4}},t.getDefaultTextureInternalFormat=
(g,y,C=null,M=!1)=>{switch(g){case ee.UNSIGNED_CHAR:switch(y){case 1:return e.context.R8;case 2:return e.context.RG8;case 3:
return e.context.RGB8;default:return e.context.RGBA8}case(C&&!M&&ee.UNSIGNED_SHORT):switch(y){case 1:return C.R16_EXT;case 2:
return C.RG16_EXT;case 3:return C.RGB16_EXT;default:return C.RGBA16_EXT}case(C&&!M&&ee.SHORT):switch(y){case 1:return C.
R16_SNORM_EXT;case 2:return C.RG16_SNORM_EXT;case 3:return C.RGB16_SNORM_EXT;default:return C.RGBA16_SNORM_EXT}case ee.UNSIGNED_SHORT:case ee.
SHORT:case ee.FLOAT:default:switch(y){case 1:return M?e.context.R16F:e.context.R32F;case 2:return M?e.context.RG16F:e.context.
RG32F;case 3:return M?e.context.RGB16F:e.context.RGB32F;default:return M?e.context.RGBA16F:e.context.RGBA32F}}},t.setBackgroundImage=
g=>{e.bgImage.src=g.src},t.setUseBackgroundImage=g=>{e.useBackgroundImage=g,e.useBackgroundImage&&!e.el.contains(e.bgImage)?
e.el.appendChild(e.bgImage):!e.useBackgroundImage&&e.el.contains(e.bgImage)&&e.el.removeChild(e.bgImage)};function i(g=e.
imageFormat){let y=document.createElement("canvas"),C=y.getContext("2d");y.width=e.canvas.width,y.height=e.canvas.height,
C.drawImage(e.canvas,0,0);let M=e.canvas.getBoundingClientRect();e.renderable.getRenderers().forEach(T=>{T.getViewProps().
forEach(S=>{if(S.getContainer){let d=S.getContainer().getElementsByTagName("canvas");for(let R=0;R<d.length;R++){let w=d[R],
L=w.getBoundingClientRect(),O=L.x-M.x,D=L.y-M.y;C.drawImage(w,O,D)}}})});let v=y.toDataURL(g);y.remove(),t.invokeImageReady(
v)}t.captureNextImage=(g="image/png",{resetCamera:y=!1,size:C=null,scale:M=1}={})=>{if(e.deleted)return null;let v=C||M!==
1?C||e.size.map(S=>S*M):null;v!==null&&!e.manageCanvas&&(ry("Ignoring the requested screenshot size/scale: resizing the \
canvas requires manageCanvas=true on vtkOpenGLRenderWindow. Capturing at the current size instead."),v=null),e.imageFormat=
g;let T=e.notifyStartCaptureImage;return e.notifyStartCaptureImage=!0,e._screenshot={size:v},new Promise((S,d)=>{let R=t.
onImageReady(w=>{if(e._screenshot.size===null)e.notifyStartCaptureImage=T,R.unsubscribe(),e._screenshot.placeHolder&&(e.
size=e._screenshot.originalSize,t.modified(),e._screenshot.cameras&&e._screenshot.cameras.forEach(({restoreParamsFn:L,arg:O})=>L(
O)),t.traverseAllPasses(),e.el.removeChild(e._screenshot.placeHolder),e._screenshot.placeHolder.remove(),e._screenshot=null),
S(w);else{let L=document.createElement("img");if(L.style=ny,L.src=w,e._screenshot.placeHolder=e.el.appendChild(L),e.canvas.
style.display="none",e._screenshot.originalSize=e.size,e.size=e._screenshot.size,e.rootOpenGLRenderWindow?.resizeFromChildRenderWindows(),
e._screenshot.size=null,t.modified(),y){let O=y!==!0;e._screenshot.cameras=e.renderable.getRenderers().map(D=>{let m=D.getActiveCamera(),
V=m.get("focalPoint","position","parallelScale");return{resetCameraArgs:O?{renderer:D}:void 0,resetCameraFn:O?y:D.resetCamera,
restoreParamsFn:m.set,arg:JSON.parse(JSON.stringify(V))}}),e._screenshot.cameras.forEach(({resetCameraFn:D,resetCameraArgs:m})=>D(
m))}t.traverseAllPasses()}})})};let o;t.getHardwareMaximumLineWidth=()=>{if(o!=null)return o;let g=t.get3DContext(),y=g.
getParameter(g.ALIASED_LINE_WIDTH_RANGE);return o=y[1],y[1]},t.getGLInformations=()=>{if(e._glInformation)return e._glInformation;
let g=t.get3DContext(),y=g.getExtension("EXT_color_buffer_float"),C=g.getExtension("WEBGL_debug_renderer_info"),M=g.getExtension(
"EXT_texture_filter_anisotropic")||g.getExtension("WEBKIT_EXT_texture_filter_anisotropic"),v=[["Max Vertex Attributes","\
MAX_VERTEX_ATTRIBS",g.getParameter(g.MAX_VERTEX_ATTRIBS)],["Max Varying Vectors","MAX_VARYING_VECTORS",g.getParameter(g.
MAX_VARYING_VECTORS)],["Max Vertex Uniform Vectors","MAX_VERTEX_UNIFORM_VECTORS",g.getParameter(g.MAX_VERTEX_UNIFORM_VECTORS)],
["Max Fragment Uniform Vectors","MAX_FRAGMENT_UNIFORM_VECTORS",g.getParameter(g.MAX_FRAGMENT_UNIFORM_VECTORS)],["Max Fra\
gment Texture Image Units","MAX_TEXTURE_IMAGE_UNITS",g.getParameter(g.MAX_TEXTURE_IMAGE_UNITS)],["Max Vertex Texture Ima\
ge Units","MAX_VERTEX_TEXTURE_IMAGE_UNITS",g.getParameter(g.MAX_VERTEX_TEXTURE_IMAGE_UNITS)],["Max Combined Texture Imag\
e Units","MAX_COMBINED_TEXTURE_IMAGE_UNITS",g.getParameter(g.MAX_COMBINED_TEXTURE_IMAGE_UNITS)],["Max 2D Texture Size","\
MAX_TEXTURE_SIZE",g.getParameter(g.MAX_TEXTURE_SIZE)],["Max Cube Texture Size","MAX_CUBE_MAP_TEXTURE_SIZE",g.getParameter(
g.MAX_CUBE_MAP_TEXTURE_SIZE)],["Max Texture Anisotropy","MAX_TEXTURE_MAX_ANISOTROPY_EXT",M&&g.getParameter(M.MAX_TEXTURE_MAX_ANISOTROPY_EXT)],
["Point Size Range","ALIASED_POINT_SIZE_RANGE",g.getParameter(g.ALIASED_POINT_SIZE_RANGE).join(" - ")],["Line Width Rang\
e","ALIASED_LINE_WIDTH_RANGE",g.getParameter(g.ALIASED_LINE_WIDTH_RANGE).join(" - ")],["Max Viewport Dimensions","MAX_VI\
EWPORT_DIMS",g.getParameter(g.MAX_VIEWPORT_DIMS).join(" - ")],["Max Renderbuffer Size","MAX_RENDERBUFFER_SIZE",g.getParameter(
g.MAX_RENDERBUFFER_SIZE)],["Framebuffer Red Bits","RED_BITS",g.getParameter(g.RED_BITS)],["Framebuffer Green Bits","GREE\
N_BITS",g.getParameter(g.GREEN_BITS)],["Framebuffer Blue Bits","BLUE_BITS",g.getParameter(g.BLUE_BITS)],["Framebuffer Al\
pha Bits","ALPHA_BITS",g.getParameter(g.ALPHA_BITS)],["Framebuffer Depth Bits","DEPTH_BITS",g.getParameter(g.DEPTH_BITS)],
["Framebuffer Stencil Bits","STENCIL_BITS",g.getParameter(g.STENCIL_BITS)],["Framebuffer Subpixel Bits","SUBPIXEL_BITS",
g.getParameter(g.SUBPIXEL_BITS)],["MSAA Samples","SAMPLES",g.getParameter(g.SAMPLES)],["MSAA Sample Buffers","SAMPLE_BUF\
FERS",g.getParameter(g.SAMPLE_BUFFERS)],["Supported Formats for UByte Render Targets     ","UNSIGNED_BYTE RENDER TARGET \
FORMATS",[Ge(g,g.RGBA8,g.RGBA,g.UNSIGNED_BYTE)?"RGBA8":"",Ge(g,g.RGB8,g.RGB,g.UNSIGNED_BYTE)?"RGB8":"",Ge(g,g.RG8,g.RG,g.
UNSIGNED_BYTE)?"RG8":"",Ge(g,g.R8,g.RED,g.UNSIGNED_BYTE)?"R8":""].join(" ")],["Supported Formats for Half Float Render T\
argets","HALF FLOAT RENDER TARGET FORMATS",[y&&Ge(g,g.RGBA16F,g.RGBA,g.HALF_FLOAT)?"RGBA16F":"",y&&Ge(g,g.RG16F,g.RG,g.HALF_FLOAT)?
"RG16F":"",y&&Ge(g,g.R16F,g.RED,g.HALF_FLOAT)?"R16F":""].join(" ")],["Supported Formats for Full Float Render Targets","\
FLOAT RENDER TARGET FORMATS",[y&&Ge(g,g.RGBA32F,g.RGBA,g.FLOAT)?"RGBA32F":"",y&&Ge(g,g.RG32F,g.RG,g.FLOAT)?"RG32F":"",y&&
Ge(g,g.R32F,g.RED,g.FLOAT)?"R32F":""].join(" ")],["Max Multiple Render Targets Buffers","MAX_DRAW_BUFFERS",g.getParameter(
g.MAX_DRAW_BUFFERS)],["High Float Precision in Vertex Shader","HIGH_FLOAT VERTEX_SHADER",[g.getShaderPrecisionFormat(g.VERTEX_SHADER,
g.HIGH_FLOAT).precision," (-2<sup>",g.getShaderPrecisionFormat(g.VERTEX_SHADER,g.HIGH_FLOAT).rangeMin,"</sup> - 2<sup>",
g.getShaderPrecisionFormat(g.VERTEX_SHADER,g.HIGH_FLOAT).rangeMax,"</sup>)"].join("")],["Medium Float Precision in Verte\
x Shader","MEDIUM_FLOAT VERTEX_SHADER",[g.getShaderPrecisionFormat(g.VERTEX_SHADER,g.MEDIUM_FLOAT).precision," (-2<sup>",
g.getShaderPrecisionFormat(g.VERTEX_SHADER,g.MEDIUM_FLOAT).rangeMin,"</sup> - 2<sup>",g.getShaderPrecisionFormat(g.VERTEX_SHADER,
g.MEDIUM_FLOAT).rangeMax,"</sup>)"].join("")],["Low Float Precision in Vertex Shader","LOW_FLOAT VERTEX_SHADER",[g.getShaderPrecisionFormat(
g.VERTEX_SHADER,g.LOW_FLOAT).precision," (-2<sup>",g.getShaderPrecisionFormat(g.VERTEX_SHADER,g.LOW_FLOAT).rangeMin,"</s\
up> - 2<sup>",g.getShaderPrecisionFormat(g.VERTEX_SHADER,g.LOW_FLOAT).rangeMax,"</sup>)"].join("")],["High Float Precisi\
on in Fragment Shader","HIGH_FLOAT FRAGMENT_SHADER",[g.getShaderPrecisionFormat(g.FRAGMENT_SHADER,g.HIGH_FLOAT).precision,
" (-2<sup>",g.getShaderPrecisionFormat(g.FRAGMENT_SHADER,g.HIGH_FLOAT).rangeMin,"</sup> - 2<sup>",g.getShaderPrecisionFormat(
g.FRAGMENT_SHADER,g.HIGH_FLOAT).rangeMax,"</sup>)"].join("")],["Medium Float Precision in Fragment Shader","MEDIUM_FLOAT\
 FRAGMENT_SHADER",[g.getShaderPrecisionFormat(g.FRAGMENT_SHADER,g.MEDIUM_FLOAT).precision," (-2<sup>",g.getShaderPrecisionFormat(
g.FRAGMENT_SHADER,g.MEDIUM_FLOAT).rangeMin,"</sup> - 2<sup>",g.getShaderPrecisionFormat(g.FRAGMENT_SHADER,g.MEDIUM_FLOAT).
rangeMax,"</sup>)"].join("")],["Low Float Precision in Fragment Shader","LOW_FLOAT FRAGMENT_SHADER",[g.getShaderPrecisionFormat(
g.FRAGMENT_SHADER,g.LOW_FLOAT).precision," (-2<sup>",g.getShaderPrecisionFormat(g.FRAGMENT_SHADER,g.LOW_FLOAT).rangeMin,
"</sup> - 2<sup>",g.getShaderPrecisionFormat(g.FRAGMENT_SHADER,g.LOW_FLOAT).rangeMax,"</sup>)"].join("")],["High Int Pre\
cision in Vertex Shader","HIGH_INT VERTEX_SHADER",[g.getShaderPrecisionFormat(g.VERTEX_SHADER,g.HIGH_INT).precision," (-\
2<sup>",g.getShaderPrecisionFormat(g.VERTEX_SHADER,g.HIGH_INT).rangeMin,"</sup> - 2<sup>",g.getShaderPrecisionFormat(g.VERTEX_SHADER,
g.HIGH_INT).rangeMax,"</sup>)"].join("")],["Medium Int Precision in Vertex Shader","MEDIUM_INT VERTEX_SHADER",[g.getShaderPrecisionFormat(
g.VERTEX_SHADER,g.MEDIUM_INT).precision," (-2<sup>",g.getShaderPrecisionFormat(g.VERTEX_SHADER,g.MEDIUM_INT).rangeMin,"<\
/sup> - 2<sup>",g.getShaderPrecisionFormat(g.VERTEX_SHADER,g.MEDIUM_INT).rangeMax,"</sup>)"].join("")],["Low Int Precisi\
on in Vertex Shader","LOW_INT VERTEX_SHADER",[g.getShaderPrecisionFormat(g.VERTEX_SHADER,g.LOW_INT).precision," (-2<sup>",
g.getShaderPrecisionFormat(g.VERTEX_SHADER,g.LOW_INT).rangeMin,"</sup> - 2<sup>",g.getShaderPrecisionFormat(g.VERTEX_SHADER,
g.LOW_INT).rangeMax,"</sup>)"].join("")],["High Int Precision in Fragment Shader","HIGH_INT FRAGMENT_SHADER",[g.getShaderPrecisionFormat(
g.FRAGMENT_SHADER,g.HIGH_INT).precision," (-2<sup>",g.getShaderPrecisionFormat(g.FRAGMENT_SHADER,g.HIGH_INT).rangeMin,"<\
/sup> - 2<sup>",g.getShaderPrecisionFormat(g.FRAGMENT_SHADER,g.HIGH_INT).rangeMax,"</sup>)"].join("")],["Medium Int Prec\
ision in Fragment Shader","MEDIUM_INT FRAGMENT_SHADER",[g.getShaderPrecisionFormat(g.FRAGMENT_SHADER,g.MEDIUM_INT).precision,
" (-2<sup>",g.getShaderPrecisionFormat(g.FRAGMENT_SHADER,g.MEDIUM_INT).rangeMin,"</sup> - 2<sup>",g.getShaderPrecisionFormat(
g.FRAGMENT_SHADER,g.MEDIUM_INT).rangeMax,"</sup>)"].join("")],["Low Int Precision in Fragment Shader","LOW_INT FRAGMENT_\
SHADER",[g.getShaderPrecisionFormat(g.FRAGMENT_SHADER,g.LOW_INT).precision," (-2<sup>",g.getShaderPrecisionFormat(g.FRAGMENT_SHADER,
g.LOW_INT).rangeMin,"</sup> - 2<sup>",g.getShaderPrecisionFormat(g.FRAGMENT_SHADER,g.LOW_INT).rangeMax,"</sup>)"].join("")],
["Supported Extensions","EXTENSIONS",g.getSupportedExtensions().join("<br/>					    ")],["WebGL Renderer","RENDERER",g.getParameter(
g.RENDERER)],["WebGL Vendor","VENDOR",g.getParameter(g.VENDOR)],["WebGL Version","VERSION",g.getParameter(g.VERSION)],["\
Shading Language Version","SHADING_LANGUAGE_VERSION",g.getParameter(g.SHADING_LANGUAGE_VERSION)],["Unmasked Renderer","U\
NMASKED_RENDERER",C&&g.getParameter(C.UNMASKED_RENDERER_WEBGL)],["Unmasked Vendor","UNMASKED_VENDOR",C&&g.getParameter(C.
UNMASKED_VENDOR_WEBGL)],["WebGL Version","WEBGL_VERSION",2]],T={};for(;v.length;){let[S,d,R]=v.pop();d&&(T[d]={label:S,value:R})}
return e._glInformation=T,T},t.traverseAllPasses=()=>{if(e.renderPasses)for(let y=0;y<e.renderPasses.length;++y)e.renderPasses[y].
traverse(t,null);t.copyParentContent(),e.notifyStartCaptureImage&&i();let g=e.renderable.getChildRenderWindowsByReference();
for(let y=0;y<g.length;++y)t.getViewNodeFor(g[y])?.traverseAllPasses()},t.copyParentContent=()=>{let g=e.rootOpenGLRenderWindow;
if(!g||!e.context2D||e.children.some(M=>!!M.getSelector?.()))return;let y=g.getCanvas(),C=e.canvas;e.context2D.drawImage(
y,0,y.height-C.height,C.width,C.height,0,0,C.width,C.height)},t.resizeFromChildRenderWindows=()=>{let g=e.renderable.getChildRenderWindowsByReference();
if(g.length>0){let y=[0,0];for(let C=0;C<g.length;++C){let M=t.getViewNodeFor(g[C])?.getSize();M&&(y[0]=M[0]>y[0]?M[0]:y[0],
y[1]=M[1]>y[1]?M[1]:y[1])}t.setSize(...y)}},t.disableCullFace=()=>{e.cullFaceEnabled&&(e.context.disable(e.context.CULL_FACE),
e.cullFaceEnabled=!1)},t.enableCullFace=()=>{e.cullFaceEnabled||(e.context.enable(e.context.CULL_FACE),e.cullFaceEnabled=
!0)},t.setCullFaceMode=g=>{e.cullFaceMode!==g&&(e.context.cullFace(g),e.cullFaceMode=g)},t.setViewStream=g=>{if(e.viewStream===
g)return!1;if(e.subscription&&(e.subscription.unsubscribe(),e.subscription=null),e.viewStream=g,e.viewStream){let y=e.renderable.
getRenderers()[0];y.getBackgroundByReference()[3]=0,t.setUseBackgroundImage(!0),e.subscription=e.viewStream.onImageReady(
C=>t.setBackgroundImage(C.image)),e.viewStream.setSize(e.size[0],e.size[1]),e.viewStream.invalidateCache(),e.viewStream.
render(),t.modified()}return!0},t.createSelector=()=>{let g=es.newInstance();return g.setOpenGLRenderWindow(t),g};function f(){
e.canvas.removeEventListener("webglcontextlost",Wc),e.canvas.removeEventListener("webglcontextrestored",t.restoreContext)}
let c=()=>{let g=e.rootOpenGLRenderWindow;return g?!g.isDeleted():!!e.context};function u(g,y=t){c()&&g?.filter(C=>!C.isDeleted()).
forEach(C=>C.releaseGraphicsResources?.(y))}function h(g){g.isDeleted()||!g.isA("vtkOpenGLRenderWindow")||(u(g.getRenderPasses(),
g),g.getChildrenByReference().forEach(h))}let l=t.setRenderPasses;t.setRenderPasses=g=>{let y=e.renderPasses;return l(g)?
(u(y?.filter(C=>!e.renderPasses?.includes(C))),!0):!1},t.delete=E.chain(()=>{u(e.renderPasses),e.context&&iy(),t.setContainer(),
t.setViewStream()},f,t.delete),t.setActiveFramebuffer=g=>{e.activeFramebuffer=g};let p=t.setSize;t.setSize=(...g)=>{let y=p(
...g);return y&&t.invokeWindowResizeEvent({width:e.size[0],height:e.size[1]}),y},t.registerGraphicsResourceUser=(g,y)=>{
e._graphicsResources.has(g)||t.setGraphicsResourceForObject(g,null,null),e._graphicsResources.get(g)?.users.add(y)},t.unregisterGraphicsResourceUser=
(g,y)=>{let C=e._graphicsResources.get(g);C&&(C.users.delete(y),C.users.size||(C.oglObject?.releaseGraphicsResources(t),
e._graphicsResources.delete(g)))},t.getGraphicsResourceForObject=g=>e._graphicsResources.get(g),t.setGraphicsResourceForObject=
(g,y,C)=>{if(!g)return;let M=e._graphicsResources.get(g);M?.oglObject?.releaseGraphicsResources(t),e._graphicsResources.
set(g,{coreObject:g,oglObject:y,hash:C,users:M?.users??new Set})},t.getGraphicsMemoryInfo=()=>{let g=0;return e._graphicsResources.
forEach(({oglObject:y})=>{g+=y.getAllocatedGPUMemoryInBytes()}),g},t.releaseGraphicsResources=()=>{h(t),e.shaderCache!==
null&&e.shaderCache.releaseGraphicsResources(t),e._graphicsResources.forEach(({oglObject:g})=>{g.releaseGraphicsResources(
t)}),e._graphicsResources.clear(),e.textureUnitManager!==null&&e.textureUnitManager.freeAll(),e.renderable.getRenderersByReference().
forEach(g=>{t.getViewNodeFor(g)?.releaseGraphicsResources()})};let x={...t};ay.forEach(g=>{t[g]=(...y)=>e.rootOpenGLRenderWindow?
e.rootOpenGLRenderWindow[g](...y):x[g](...y)})}var uy={cullFaceEnabled:!1,cullFaceMode:null,shaderCache:null,initialized:!1,
context:null,context2D:null,canvas:null,manageCanvas:!0,cursorVisibility:!0,cursor:"pointer",textureUnitManager:null,textureResourceIds:null,
containerSize:null,renderPasses:[],notifyStartCaptureImage:!1,activeFramebuffer:null,imageFormat:"image/png",useOffScreen:!1,
useBackgroundImage:!1};function Ac(t,e,r={}){Object.assign(e,uy,r),zc.extend(t,e,r),e.canvas||(e.canvas=document.createElement(
"canvas"),e.canvas.style.width="100%"),e.selector||(e.selector=es.newInstance(),e.selector.setOpenGLRenderWindow(t)),e.bgImage=
new Image,e.bgImage.style.position="absolute",e.bgImage.style.left="0",e.bgImage.style.top="0",e.bgImage.style.width="10\
0%",e.bgImage.style.height="100%",e.bgImage.style.zIndex="-1",e._textureResourceIds=new Map,e._graphicsResources=new Map,
e._glInformation=null,e.myFactory=ei.newInstance(),e.shaderCache=Bc.newInstance(),e.shaderCache.setOpenGLRenderWindow(t),
e.renderPasses[0]=yc.newInstance(),E.get(t,e,["shaderCache","textureUnitManager","useBackgroundImage","activeFramebuffer",
"rootOpenGLRenderWindow"]),E.setGet(t,e,["initialized","context","context2D","canvas","manageCanvas","renderPasses","not\
ifyStartCaptureImage","cursor","useOffScreen"]),E.setGetArray(t,e,["size"],2),E.event(t,e,"imageReady"),E.event(t,e,"win\
dowResizeEvent"),cy(t,e)}var rs=E.newInstance(Ac,"vtkOpenGLRenderWindow");Pa("WebGL",rs);var jc={newInstance:rs,extend:Ac,
pushMonitorGLContextCount:oy,popMonitorGLContextCount:fy};Oe("vtkRenderWindow",rs);var{vtkDebugMacro:hn,vtkWarningMacro:gy}=E,Kc=!1;function hy(t,e){e.classHierarchy.push("vtkCamera");let r=new Float64Array(
3),n=new Float64Array([0,0,-1]),a=new Float64Array([0,1,0]),s=_.identity(new Float64Array(16)),i=_.identity(new Float64Array(
16)),o=_.identity(new Float64Array(16)),f=new Float64Array(3),c=new Float64Array(3),u=new Float64Array(3),h=_.identity(new Float64Array(
16)),l=_.identity(new Float64Array(16)),p=new Float64Array(3),x=new Float64Array(3);function g(){e.viewPlaneNormal[0]=-e.
directionOfProjection[0],e.viewPlaneNormal[1]=-e.directionOfProjection[1],e.viewPlaneNormal[2]=-e.directionOfProjection[2]}
t.orthogonalizeViewUp=()=>{t.getViewMatrix(s),e.viewUp[0]=s[4],e.viewUp[1]=s[5],e.viewUp[2]=s[6],t.modified()};let y=(v,T,S)=>v===
e.position[0]&&T===e.position[1]&&S===e.position[2]?!1:(e.position[0]=v,e.position[1]=T,e.position[2]=S,!0);t.setPosition=
(v,T,S)=>y(v,T,S)?(t.computeDistance(),t.modified(),!0):!1;let C=(v,T,S)=>v===e.focalPoint[0]&&T===e.focalPoint[1]&&S===
e.focalPoint[2]?!1:(e.focalPoint[0]=v,e.focalPoint[1]=T,e.focalPoint[2]=S,!0);t.setFocalPoint=(v,T,S)=>C(v,T,S)?(t.computeDistance(),
t.modified(),!0):!1,t.setPositionAndFocalPoint=(v,T)=>{let S=y(...v),d=C(...T);return S||d?(t.computeDistance(),t.modified(),
!0):!1},t.setDistance=v=>{if(e.distance===v)return;e.distance=v,e.distance<1e-20&&(e.distance=1e-20,hn("Distance is set \
to minimum."));let T=e.directionOfProjection;e.focalPoint[0]=e.position[0]+T[0]*e.distance,e.focalPoint[1]=e.position[1]+
T[1]*e.distance,e.focalPoint[2]=e.position[2]+T[2]*e.distance,t.modified()},t.computeDistance=()=>{let v=e.focalPoint[0]-
e.position[0],T=e.focalPoint[1]-e.position[1],S=e.focalPoint[2]-e.position[2];if(e.distance=Math.sqrt(v*v+T*T+S*S),e.distance<
1e-20){e.distance=1e-20,hn("Distance is set to minimum.");let d=e.directionOfProjection;e.focalPoint[0]=e.position[0]+d[0]*
e.distance,e.focalPoint[1]=e.position[1]+d[1]*e.distance,e.focalPoint[2]=e.position[2]+d[2]*e.distance}e.directionOfProjection[0]=
v/e.distance,e.directionOfProjection[1]=T/e.distance,e.directionOfProjection[2]=S/e.distance,g()},t.dolly=v=>{if(v<=0)return;
let T=e.distance/v;t.setPosition(e.focalPoint[0]-T*e.directionOfProjection[0],e.focalPoint[1]-T*e.directionOfProjection[1],
e.focalPoint[2]-T*e.directionOfProjection[2])},t.roll=v=>{let T=e.position,S=e.focalPoint,d=e.viewUp,R=new Float64Array(
[d[0],d[1],d[2],0]);_.identity(h);let w=new Float64Array([S[0]-T[0],S[1]-T[1],S[2]-T[2]]);_.rotate(h,h,P(v),w),De.transformMat4(
R,R,h),e.viewUp[0]=R[0],e.viewUp[1]=R[1],e.viewUp[2]=R[2],t.modified()},t.azimuth=v=>{let T=e.focalPoint;_.identity(l),_.
translate(l,l,T),_.rotate(l,l,P(v),e.viewUp),_.translate(l,l,[-T[0],-T[1],-T[2]]),k.transformMat4(p,e.position,l),t.setPosition(
p[0],p[1],p[2])},t.yaw=v=>{let T=e.position;_.identity(l),_.translate(l,l,T),_.rotate(l,l,P(v),e.viewUp),_.translate(l,l,
[-T[0],-T[1],-T[2]]),k.transformMat4(x,e.focalPoint,l),t.setFocalPoint(x[0],x[1],x[2])},t.elevation=v=>{let T=e.focalPoint;
t.getViewMatrix(s);let S=[-s[0],-s[1],-s[2]];_.identity(l),_.translate(l,l,T),_.rotate(l,l,P(v),S),_.translate(l,l,[-T[0],
-T[1],-T[2]]),k.transformMat4(p,e.position,l),t.setPosition(p[0],p[1],p[2])},t.pitch=v=>{let T=e.position;t.getViewMatrix(
s);let S=[s[0],s[1],s[2]];_.identity(l),_.translate(l,l,T),_.rotate(l,l,P(v),S),_.translate(l,l,[-T[0],-T[1],-T[2]]),k.transformMat4(
x,e.focalPoint,l),t.setFocalPoint(...x)},t.zoom=v=>{v<=0||(e.parallelProjection?e.parallelScale/=v:e.viewAngle/=v,t.modified())},
t.translate=(v,T,S)=>{let d=[v,T,S];ke(e.position,d,e.position),ke(e.focalPoint,d,e.focalPoint),t.computeDistance(),t.modified()},
t.applyTransform=v=>{let T=[...e.viewUp,1],S=[],d=[],R=[];T[0]+=e.position[0],T[1]+=e.position[1],T[2]+=e.position[2],De.
transformMat4(S,[...e.position,1],v),De.transformMat4(d,[...e.focalPoint,1],v),De.transformMat4(R,T,v),R[0]-=S[0],R[1]-=
S[1],R[2]-=S[2],t.setPosition(...S.slice(0,3)),t.setFocalPoint(...d.slice(0,3)),t.setViewUp(...R.slice(0,3))},t.getThickness=
()=>e.clippingRange[1]-e.clippingRange[0],t.setThickness=v=>{let T=v;T<1e-20&&(T=1e-20,hn("Thickness is set to minimum.")),
t.setClippingRange(e.clippingRange[0],e.clippingRange[0]+T)},t.setThicknessFromFocalPoint=v=>{let T=v;T<1e-20&&(T=1e-20,
hn("Thickness is set to minimum.")),t.setClippingRange(e.distance-T/2,e.distance+T/2)},t.setRoll=v=>{},t.getRoll=()=>{},
t.setObliqueAngles=(v,T)=>{},t.getOrientation=()=>{},t.getOrientationWXYZ=()=>{},t.getFrustumPlanes=(v=1,T=new Float64Array(
24))=>{let S=[[1,0,0,1],[-1,0,0,1],[0,1,0,1],[0,-1,0,1],[0,0,1,1],[0,0,-1,1]],d=t.getCompositeProjectionMatrix(v,-1,1);for(let R=0;R<
6;R++)De.transformMat4(S[R],S[R],d),no(S[R]),T[4*R+0]=S[R][0],T[4*R+1]=S[R][1],T[4*R+2]=S[R][2],T[4*R+3]=S[R][3];return T},
t.getCameraLightTransformMatrix=v=>(_.copy(v,e.cameraLightTransform),v),t.computeCameraLightTransform=()=>{t.getViewMatrix(
s),_.invert(s,s),_.fromScaling(i,[e.distance,e.distance,e.distance]),_.multiply(s,s,i),_.identity(e.cameraLightTransform),
_.translate(e.cameraLightTransform,s,[0,0,-1])},t.deepCopy=v=>{},t.physicalOrientationToWorldDirection=v=>{let T=ae.fromValues(
v[0],v[1],v[2],v[3]),S=ae.create(),d=ae.fromValues(0,0,1,0);return ae.conjugate(S,T),ae.multiply(d,T,d),ae.multiply(d,d,
S),[d[0],d[1],d[2]]},t.getPhysicalToWorldMatrix=v=>{t.getWorldToPhysicalMatrix(v),_.invert(v,v)},t.getWorldToPhysicalMatrix=
v=>{_.identity(v);let T=[3];ue(e.physicalViewNorth,e.physicalViewUp,T),v[0]=T[0],v[1]=T[1],v[2]=T[2],v[4]=e.physicalViewUp[0],
v[5]=e.physicalViewUp[1],v[6]=e.physicalViewUp[2],v[8]=-e.physicalViewNorth[0],v[9]=-e.physicalViewNorth[1],v[10]=-e.physicalViewNorth[2],
_.transpose(v,v),k.set(f,1/e.physicalScale,1/e.physicalScale,1/e.physicalScale),_.scale(v,v,f),_.translate(v,v,e.physicalTranslation)},
t.computeViewParametersFromViewMatrix=v=>{_.invert(s,v),k.transformMat4(f,r,s),t.computeDistance();let T=e.distance;t.setPosition(
f[0],f[1],f[2]),k.transformMat4(c,n,s),k.subtract(c,c,f),k.normalize(c,c),t.setDirectionOfProjection(c[0],c[1],c[2]),k.transformMat4(
u,a,s),k.subtract(u,u,f),k.normalize(u,u),t.setViewUp(u[0],u[1],u[2]),t.setDistance(T)},t.computeViewParametersFromPhysicalMatrix=
v=>{t.getWorldToPhysicalMatrix(s),_.multiply(s,v,s),t.computeViewParametersFromViewMatrix(s)},t.setViewMatrix=v=>{e.viewMatrix=
v,e.viewMatrix&&(t.computeViewParametersFromViewMatrix(e.viewMatrix),_.transpose(e.viewMatrix,e.viewMatrix))};let M=v=>(e.
modelTransformMatrix&&(_.transpose(o,e.modelTransformMatrix),_.multiply(v,o,v)),v);t.getViewMatrix=(v=new Float64Array(16))=>e.
viewMatrix?(_.copy(v,e.viewMatrix),M(v)):(_.lookAt(v,e.position,e.focalPoint,e.viewUp),_.transpose(v,v),M(v)),t.setProjectionMatrix=
v=>(Kc||(Kc=!0,gy("setProjectionMatrix() is deprecated. Use setExplicitProjectionMatrix() instead.")),t.setExplicitProjectionMatrix(
v)),t.getProjectionMatrix=(v,T,S,d=new Float64Array(16))=>{let R=d;if(e.explicitProjectionMatrix){let O=1/e.physicalScale;
return k.set(f,O,O,O),_.copy(R,e.explicitProjectionMatrix),_.scale(R,R,f),_.transpose(R,R),R}_.identity(R),_.identity(s);
let w=e.clippingRange[1]-e.clippingRange[0],L=[e.clippingRange[0]+(T+1)*w/2,e.clippingRange[0]+(S+1)*w/2];if(e.parallelProjection){
let O=e.parallelScale*v,D=e.parallelScale,m=(e.windowCenter[0]-1)*O,V=(e.windowCenter[0]+1)*O,F=(e.windowCenter[1]-1)*D,
G=(e.windowCenter[1]+1)*D;_.ortho(s,m,V,F,G,L[0],L[1]),_.transpose(s,s)}else{if(e.useOffAxisProjection)throw new Error("\
Off-Axis projection is not supported at this time");{let O=Math.tan(P(e.viewAngle)/2),D,m;e.useHorizontalViewAngle===!0?
(D=e.clippingRange[0]*O,m=e.clippingRange[0]*O/v):(D=e.clippingRange[0]*O*v,m=e.clippingRange[0]*O);let V=(e.windowCenter[0]-
1)*D,F=(e.windowCenter[0]+1)*D,G=(e.windowCenter[1]-1)*m,B=(e.windowCenter[1]+1)*m,A=L[0],q=L[1];s[0]=2*A/(F-V),s[5]=2*A/
(B-G),s[2]=(V+F)/(F-V),s[6]=(G+B)/(B-G),s[10]=-(A+q)/(q-A),s[14]=-1,s[11]=-2*A*q/(q-A),s[15]=0}}return _.copy(R,s),R},t.
getCompositeProjectionMatrix=(v,T,S)=>{let d=t.getViewMatrix(),R=t.getProjectionMatrix(v,T,S);return _.multiply(R,d,R),R},
t.setDirectionOfProjection=(v,T,S)=>{if(e.directionOfProjection[0]===v&&e.directionOfProjection[1]===T&&e.directionOfProjection[2]===
S)return;e.directionOfProjection[0]=v,e.directionOfProjection[1]=T,e.directionOfProjection[2]=S;let d=e.directionOfProjection;
e.focalPoint[0]=e.position[0]+d[0]*e.distance,e.focalPoint[1]=e.position[1]+d[1]*e.distance,e.focalPoint[2]=e.position[2]+
d[2]*e.distance,g()},t.setDeviceAngles=(v,T,S,d)=>{let R=[3];ue(e.physicalViewNorth,e.physicalViewUp,R);let w=_.identity(
new Float64Array(16));_.rotate(w,w,P(v),e.physicalViewUp),_.rotate(w,w,P(T),R),_.rotate(w,w,P(S),e.physicalViewNorth),_.
rotate(w,w,P(-d),e.physicalViewUp);let L=new Float64Array([-e.physicalViewUp[0],-e.physicalViewUp[1],-e.physicalViewUp[2]]),
O=new Float64Array(e.physicalViewNorth);k.transformMat4(L,L,w),k.transformMat4(O,O,w),t.setDirectionOfProjection(L[0],L[1],
L[2]),t.setViewUp(O[0],O[1],O[2]),t.modified()},t.setOrientationWXYZ=(v,T,S,d)=>{let R=_.identity(new Float64Array(16));
if(v!==0&&(T!==0||S!==0||d!==0)){let O=P(v),D=ae.create();ae.setAxisAngle(D,[T,S,d],O),_.fromQuat(R,D)}let w=new Float64Array(
3);k.transformMat4(w,[0,0,-1],R);let L=new Float64Array(3);k.transformMat4(L,[0,1,0],R),t.setDirectionOfProjection(...w),
t.setViewUp(...L),t.modified()},t.computeClippingRange=v=>{let T=null,S=null;T=e.viewPlaneNormal,S=e.position;let d=-T[0],
R=-T[1],w=-T[2],L=-(d*S[0]+R*S[1]+w*S[2]),O=[d*v[0]+R*v[2]+w*v[4]+L,1e-18];for(let D=0;D<2;D++)for(let m=0;m<2;m++)for(let V=0;V<
2;V++){let F=d*v[V]+R*v[2+m]+w*v[4+D]+L;O[0]=F<O[0]?F:O[0],O[1]=F>O[1]?F:O[1]}return O}}var ly={position:[0,0,1],focalPoint:[
0,0,0],viewUp:[0,1,0],directionOfProjection:[0,0,-1],parallelProjection:!1,useHorizontalViewAngle:!1,viewAngle:30,parallelScale:1,
clippingRange:[.01,1000.01],windowCenter:[0,0],viewPlaneNormal:[0,0,1],useOffAxisProjection:!1,screenBottomLeft:[-.5,-.5,
-.5],screenBottomRight:[.5,-.5,-.5],screenTopRight:[.5,.5,-.5],freezeFocalPoint:!1,explicitProjectionMatrix:null,viewMatrix:null,
modelTransformMatrix:null,cameraLightTransform:_.create(),physicalTranslation:[0,0,0],physicalScale:1,physicalViewUp:[0,
1,0],physicalViewNorth:[0,0,-1]};function $c(t,e,r={}){Object.assign(e,ly,r),E.obj(t,e),E.get(t,e,["distance"]),E.setGet(
t,e,["parallelProjection","useHorizontalViewAngle","viewAngle","parallelScale","useOffAxisProjection","freezeFocalPoint",
"physicalScale","modelTransformMatrix","explicitProjectionMatrix"]),E.getArray(t,e,["directionOfProjection","viewPlaneNo\
rmal","position","focalPoint"]),E.setGetArray(t,e,["clippingRange","windowCenter"],2),E.setGetArray(t,e,["viewUp","scree\
nBottomLeft","screenBottomRight","screenTopRight","physicalTranslation","physicalViewUp","physicalViewNorth"],3),hy(t,e)}
var py=E.newInstance($c,"vtkCamera"),Xc={newInstance:py,extend:$c};var vy=["HeadLight","CameraLight","SceneLight"];function Ty(t,e){e.classHierarchy.push("vtkLight");let r=new Float64Array(
3);t.getTransformedPosition=()=>(e.transformMatrix?k.transformMat4(r,e.position,e.transformMatrix):k.set(r,e.position[0],
e.position[1],e.position[2]),r),t.getTransformedFocalPoint=()=>(e.transformMatrix?k.transformMat4(r,e.focalPoint,e.transformMatrix):
k.set(r,e.focalPoint[0],e.focalPoint[1],e.focalPoint[2]),r),t.getDirection=()=>(e.directionMTime<e.mtime&&(k.sub(e.direction,
e.focalPoint,e.position),ve(e.direction),e.directionMTime=e.mtime),e.direction),t.setDirection=n=>{let a=new Float64Array(
3);k.sub(a,e.position,n),e.focalPoint=a},t.setDirectionAngle=(n,a)=>{let s=P(n),i=P(a);t.setPosition(Math.cos(s)*Math.sin(
i),Math.sin(s),Math.cos(s)*Math.cos(i)),t.setFocalPoint(0,0,0),t.setPositional(0)},t.setLightTypeToHeadLight=()=>{t.setLightType(
"HeadLight")},t.setLightTypeToCameraLight=()=>{t.setLightType("CameraLight")},t.setLightTypeToSceneLight=()=>{t.setTransformMatrix(
null),t.setLightType("SceneLight")},t.lightTypeIsHeadLight=()=>e.lightType==="HeadLight",t.lightTypeIsSceneLight=()=>e.lightType===
"SceneLight",t.lightTypeIsCameraLight=()=>e.lightType==="CameraLight"}var yy={switch:!0,intensity:1,color:[1,1,1],position:[
0,0,1],focalPoint:[0,0,0],positional:!1,exponent:1,coneAngle:30,coneFalloff:5,attenuationValues:[1,0,0],transformMatrix:null,
lightType:"SceneLight",shadowAttenuation:1,direction:[0,0,0],directionMTime:0};function Yc(t,e,r={}){Object.assign(e,yy,
r),E.obj(t,e),E.setGet(t,e,["intensity","switch","positional","exponent","coneAngle","coneFalloff","transformMatrix","li\
ghtType","shadowAttenuation","attenuationValues"]),E.setGetArray(t,e,["color","position","focalPoint","attenuationValues"],
3),Ty(t,e)}var xy=E.newInstance(Yc,"vtkLight"),qc={newInstance:xy,extend:Yc,LIGHT_TYPES:vy};var{vtkErrorMacro:ln}=E;function Cy(t){return()=>ln(`vtkViewport::${t} - NOT IMPLEMENTED`)}function Sy(t,e){e.classHierarchy.
push("vtkViewport"),t.getViewProps=()=>e.props,t.hasViewProp=n=>e.props.includes(n),t.addViewProp=n=>{n&&!t.hasViewProp(
n)&&e.props.push(n)},t.removeViewProp=n=>{let a=e.props.filter(s=>s!==n);e.props.length!==a.length&&(e.props=a)},t.removeAllViewProps=
()=>{e.props=[]};function r(n,a=[]){a.push(n);let s=n.getNestedProps();if(s&&s.length)for(let i=0;i<s.length;i++)r(s[i],
a);return a}t.getViewPropsWithNestedProps=()=>{let n=[];e.actors2D=[];for(let a=0;a<e.props.length;a++){let s=e.props[a].
getActors2D();s&&(!Array.isArray(s)||s.length>0)?e.actors2D=e.actors2D.concat(s):r(e.props[a],n)}return e.actors2D.sort(
(a,s)=>a.getLayerNumber()-s.getLayerNumber()),n=n.concat(e.actors2D),n},t.addActor2D=t.addViewProp,t.removeActor2D=n=>{t.
removeViewProp(n)},t.getActors2D=()=>(e.actors2D=[],e.props.forEach(n=>{e.actors2D=e.actors2D.concat(n.getActors2D())}),
e.actors2D),t.displayToView=()=>ln("call displayToView on your view instead"),t.viewToDisplay=()=>ln("callviewtodisplay \
on your view instead"),t.getSize=()=>ln("call getSize on your View instead"),t.normalizedDisplayToProjection=(n,a,s)=>{let i=t.
normalizedDisplayToNormalizedViewport(n,a,s);return t.normalizedViewportToProjection(i[0],i[1],i[2])},t.normalizedDisplayToNormalizedViewport=
(n,a,s)=>{let i=[e.viewport[2]-e.viewport[0],e.viewport[3]-e.viewport[1]];return[(n-e.viewport[0])/i[0],(a-e.viewport[1])/
i[1],s]},t.normalizedViewportToProjection=(n,a,s)=>[n*2-1,a*2-1,s*2-1],t.projectionToNormalizedDisplay=(n,a,s)=>{let i=t.
projectionToNormalizedViewport(n,a,s);return t.normalizedViewportToNormalizedDisplay(i[0],i[1],i[2])},t.normalizedViewportToNormalizedDisplay=
(n,a,s)=>{let i=[e.viewport[2]-e.viewport[0],e.viewport[3]-e.viewport[1]];return[n*i[0]+e.viewport[0],a*i[1]+e.viewport[1],
s]},t.projectionToNormalizedViewport=(n,a,s)=>[(n+1)*.5,(a+1)*.5,(s+1)*.5],t.PickPropFrom=Cy("PickPropFrom")}var My={background:[
0,0,0],background2:[.2,.2,.2],gradientBackground:!1,viewport:[0,0,1,1],aspect:[1,1],pixelAspect:[1,1],props:[],actors2D:[]};
function Zc(t,e,r={}){Object.assign(e,My,r),E.obj(t,e),E.event(t,e,"event"),E.setGet(t,e,["gradientBackground"]),E.setGetArray(
t,e,["viewport"],4),E.setGetArray(t,e,["background","background2"],3),Sy(t,e)}var dy=E.newInstance(Zc,"vtkViewport"),Qc={
newInstance:dy,extend:Zc};var{vtkDebugMacro:bt,vtkErrorMacro:Pe,vtkWarningMacro:Ey}=Xe;function Jc(t){return()=>Pe(`vtkRenderer::${t} - NOT IMPLEM\
ENTED`)}function Ic(t,e){let r=[];for(let n=0;n<t.length;n++){let a=e(t[n]);if(Array.isArray(a))for(let s=0;s<a.length;s++)
r.push(a[s]);else r.push(a)}return r}var Ry=t=>t.getActors(),wy=t=>t.getVolumes();function Oy(t,e){e.classHierarchy.push(
"vtkRenderer");let r={type:"ComputeVisiblePropBoundsEvent",renderer:t},n={type:"ResetCameraClippingRangeEvent",renderer:t},
a={type:"ResetCameraEvent",renderer:t};function s(i,o){return o?H.transformBounds(i,o,[]):i}t.updateCamera=()=>(e.activeCamera||
(bt("No cameras are on, creating one."),t.getActiveCameraAndResetIfCreated()),e.activeCamera.render(t),!0),t.updateLightsGeometryToFollowCamera=
()=>{let i=t.getActiveCameraAndResetIfCreated();e.lights.forEach(o=>{o.lightTypeIsSceneLight()||(o.lightTypeIsHeadLight()?
(o.setPositionFrom(i.getPositionByReference()),o.setFocalPointFrom(i.getFocalPointByReference()),o.modified(i.getMTime())):
o.lightTypeIsCameraLight()?o.setTransformMatrix(i.getCameraLightTransformMatrix(_.create())):Pe("light has unknown light\
 type",o.get()))})},t.updateLightGeometry=()=>e.lightFollowCamera?t.updateLightsGeometryToFollowCamera():!0,t.allocateTime=
Jc("allocateTime"),t.updateGeometry=Jc("updateGeometry"),t.getVTKWindow=()=>e._renderWindow,t.setLayer=i=>{bt(t.getClassName(),
t,"setting Layer to ",i),e.layer!==i&&(e.layer=i,t.modified()),t.setPreserveColorBuffer(!!i)},t.setActiveCamera=i=>e.activeCamera===
i?!1:(e.activeCamera=i,t.modified(),t.invokeEvent({type:"ActiveCameraEvent",camera:i}),!0),t.makeCamera=()=>{let i=Xc.newInstance();
return t.invokeEvent({type:"CreateCameraEvent",camera:i}),i},t.getActiveCamera=()=>(e.activeCamera||(e.activeCamera=t.makeCamera()),
e.activeCamera),t.getActiveCameraAndResetIfCreated=()=>(e.activeCamera||(t.getActiveCamera(),t.resetCamera()),e.activeCamera),
t.getActors=()=>(e.actors=Ic(e.props,Ry),e.actors),t.addActor=t.addViewProp,t.removeActor=i=>{e.actors=e.actors.filter(o=>o!==
i),t.removeViewProp(i),t.modified()},t.removeAllActors=()=>{t.getActors().forEach(i=>{t.removeViewProp(i)}),e.actors=[],
t.modified()},t.getVolumes=()=>(e.volumes=Ic(e.props,wy),e.volumes),t.addVolume=t.addViewProp,t.removeVolume=i=>{e.volumes=
e.volumes.filter(o=>o!==i),t.removeViewProp(i),t.modified()},t.removeAllVolumes=()=>{t.getVolumes().forEach(i=>{t.removeViewProp(
i)}),e.volumes=[],t.modified()},t.hasLight=i=>e.lights.includes(i),t.addLight=i=>{i&&!t.hasLight(i)&&(e.lights.push(i),t.
modified())},t.removeLight=i=>{e.lights=e.lights.filter(o=>o!==i),t.modified()},t.removeAllLights=()=>{e.lights=[],t.modified()},
t.setLightCollection=i=>{e.lights=i,t.modified()},t.makeLight=qc.newInstance,t.createLight=()=>{e.automaticLightCreation&&
(e._createdLight&&(t.removeLight(e._createdLight),e._createdLight.delete(),e._createdLight=null),e._createdLight=t.makeLight(),
t.addLight(e._createdLight),e._createdLight.setLightTypeToHeadLight(),e._createdLight.setPosition(t.getActiveCamera().getPosition()),
e._createdLight.setFocalPoint(t.getActiveCamera().getFocalPoint()))},t.normalizedDisplayToWorld=(i,o,f,c)=>{let u=t.normalizedDisplayToProjection(
i,o,f);return u=t.projectionToView(u[0],u[1],u[2],c),t.viewToWorld(u[0],u[1],u[2])},t.worldToNormalizedDisplay=(i,o,f,c)=>{
let u=t.worldToView(i,o,f);return u=t.viewToProjection(u[0],u[1],u[2],c),t.projectionToNormalizedDisplay(u[0],u[1],u[2])},
t.viewToWorld=(i,o,f)=>{if(e.activeCamera===null)return Pe("ViewToWorld: no active camera, cannot compute view to world,\
 returning 0,0,0"),[0,0,0];let c=e.activeCamera.getViewMatrix();_.invert(c,c),_.transpose(c,c);let u=new Float64Array([i,
o,f]);return k.transformMat4(u,u,c),u},t.projectionToView=(i,o,f,c)=>{if(e.activeCamera===null)return Pe("ProjectionToVi\
ew: no active camera, cannot compute projection to view, returning 0,0,0"),[0,0,0];let u=e.activeCamera.getProjectionMatrix(
c,-1,1);_.invert(u,u),_.transpose(u,u);let h=new Float64Array([i,o,f]);return k.transformMat4(h,h,u),h},t.worldToView=(i,o,f)=>{
if(e.activeCamera===null)return Pe("WorldToView: no active camera, cannot compute view to world, returning 0,0,0"),[0,0,
0];let c=e.activeCamera.getViewMatrix();_.transpose(c,c);let u=new Float64Array([i,o,f]);return k.transformMat4(u,u,c),u},
t.viewToProjection=(i,o,f,c)=>{if(e.activeCamera===null)return Pe("ViewToProjection: no active camera, cannot compute vi\
ew to projection, returning 0,0,0"),[0,0,0];let u=e.activeCamera.getProjectionMatrix(c,-1,1);_.transpose(u,u);let h=new Float64Array(
[i,o,f]);return k.transformMat4(h,h,u),h},t.computeVisiblePropBounds=()=>{e.allBounds[0]=H.INIT_BOUNDS[0],e.allBounds[1]=
H.INIT_BOUNDS[1],e.allBounds[2]=H.INIT_BOUNDS[2],e.allBounds[3]=H.INIT_BOUNDS[3],e.allBounds[4]=H.INIT_BOUNDS[4],e.allBounds[5]=
H.INIT_BOUNDS[5];let i=!0;t.invokeEvent(r);for(let o=0;o<e.props.length;++o){let f=e.props[o];if(f.getVisibility()&&f.getUseBounds()){
let c=f.getBounds();c&&Wt(c)&&(i=!1,c[0]<e.allBounds[0]&&(e.allBounds[0]=c[0]),c[1]>e.allBounds[1]&&(e.allBounds[1]=c[1]),
c[2]<e.allBounds[2]&&(e.allBounds[2]=c[2]),c[3]>e.allBounds[3]&&(e.allBounds[3]=c[3]),c[4]<e.allBounds[4]&&(e.allBounds[4]=
c[4]),c[5]>e.allBounds[5]&&(e.allBounds[5]=c[5]))}}return i&&(Ht(e.allBounds),bt("Can't compute bounds, no 3D props are \
visible")),e.allBounds},t.resetCamera=(i=null)=>{let o=i||t.computeVisiblePropBounds();if(!Wt(o))return bt("Cannot reset\
 camera!"),!1;let f=null;if(t.getActiveCamera())f=e.activeCamera.getViewPlaneNormal();else return Pe("Trying to reset no\
n-existent camera"),!1;e.activeCamera.setViewAngle(30);let c=s(o,e.activeCamera.getModelTransformMatrix()),u=H.getCenter(
c),h=H.getLength(c,0),l=H.getLength(c,1),p=H.getLength(c,2);h*=h,l*=l,p*=p;let x=h+l+p;x=x===0?1:x,x=Math.sqrt(x)*.5;let g=P(
e.activeCamera.getViewAngle()),y=x,C=x/Math.sin(g*.5),M=e.activeCamera.getViewUp();return Math.abs(U(M,f))>.999&&(Ey("Re\
setting view-up since view plane normal is parallel"),e.activeCamera.setViewUp(-M[2],M[0],M[1])),e.activeCamera.setFocalPoint(
u[0],u[1],u[2]),e.activeCamera.setPosition(u[0]+C*f[0],u[1]+C*f[1],u[2]+C*f[2]),t.resetCameraClippingRange(o),e.activeCamera.
setParallelScale(y),e.activeCamera.setPhysicalScale(x),e.activeCamera.setPhysicalTranslation(-u[0],-u[1],-u[2]),t.invokeEvent(
a),!0},t.resetCameraClippingRange=(i=null)=>{let o=i||t.computeVisiblePropBounds();if(!Wt(o))return bt("Cannot reset cam\
era clipping range!"),!1;if(t.getActiveCameraAndResetIfCreated(),!e.activeCamera)return Pe("Trying to reset clipping ran\
ge of non-existent camera"),!1;let f=e.activeCamera.computeClippingRange(s(o,e.activeCamera.getModelTransformMatrix())),
c=0;if(e.activeCamera.getParallelProjection())c=.2*e.activeCamera.getParallelScale();else{let u=P(e.activeCamera.getViewAngle());
c=.2*Math.tan(u/2)*f[1]}return f[1]-f[0]<c&&(c=c-f[1]+f[0],f[1]+=c/2,f[0]-=c/2),f[0]<0&&(f[0]=0),f[0]=.99*f[0]-(f[1]-f[0])*
e.clippingRangeExpansion,f[1]=1.01*f[1]+(f[1]-f[0])*e.clippingRangeExpansion,f[0]=f[0]>=f[1]?.01*f[1]:f[0],e.nearClippingPlaneTolerance||
(e.nearClippingPlaneTolerance=.01),f[0]<e.nearClippingPlaneTolerance*f[1]&&(f[0]=e.nearClippingPlaneTolerance*f[1]),e.activeCamera.
setClippingRange(f[0],f[1]),t.invokeEvent(n),!1},t.setRenderWindow=i=>{i!==e._renderWindow&&(e._vtkWindow=i,e._renderWindow=
i)},t.visibleActorCount=()=>e.props.filter(i=>i.getVisibility()).length,t.visibleVolumeCount=t.visibleActorCount,t.getMTime=
()=>{let i=e.mtime,o=e.activeCamera?e.activeCamera.getMTime():0;o>i&&(i=o);let f=e._createdLight?e._createdLight.getMTime():
0;return f>i&&(i=f),i},t.getTransparent=()=>!!e.preserveColorBuffer,t.isActiveCameraCreated=()=>!!e.activeCamera}var Ly={
pickedProp:null,activeCamera:null,allBounds:[],ambient:[1,1,1],allocatedRenderTime:100,timeFactor:1,automaticLightCreation:!0,
twoSidedLighting:!0,lastRenderTimeInSeconds:-1,renderWindow:null,lights:[],actors:[],volumes:[],lightFollowCamera:!0,numberOfPropsRendered:0,
propArray:null,pathArray:null,layer:0,preserveColorBuffer:!1,preserveDepthBuffer:!1,computeVisiblePropBounds:Ca(),interactive:!0,
nearClippingPlaneTolerance:0,clippingRangeExpansion:.05,erase:!0,draw:!0,useShadows:!1,useDepthPeeling:!1,occlusionRatio:0,
maximumNumberOfPeels:4,selector:null,delegate:null,texturedBackground:!1,backgroundTexture:null,environmentTexture:null,
environmentTextureDiffuseStrength:1,environmentTextureSpecularStrength:1,useEnvironmentTextureAsBackground:!1,pass:0};function Pc(t,e,r={}){
for(Object.assign(e,Ly,r),Qc.extend(t,e,r),e.background||(e.background=[0,0,0,1]);e.background.length<3;)e.background.push(
0);e.background.length===3&&e.background.push(1),Se(t,e,["_renderWindow","allocatedRenderTime","timeFactor","lastRenderT\
imeInSeconds","numberOfPropsRendered","lastRenderingUsedDepthPeeling","selector"]),Te(t,e,["twoSidedLighting","lightFoll\
owCamera","automaticLightCreation","erase","draw","nearClippingPlaneTolerance","clippingRangeExpansion","backingStore","\
interactive","layer","preserveColorBuffer","preserveDepthBuffer","useDepthPeeling","occlusionRatio","maximumNumberOfPeel\
s","delegate","backgroundTexture","texturedBackground","environmentTexture","environmentTextureDiffuseStrength","environ\
mentTextureSpecularStrength","useEnvironmentTextureAsBackground","useShadows","pass"]),tt(t,e,["actors","volumes","light\
s"]),Cr(t,e,["background"],4,1),Ye(t,e,["renderWindow"]),Oy(t,e)}var Dy=pe(Pc,"vtkRenderer"),bc={newInstance:Dy,extend:Pc};var _y=1e-6;function my(t,e){e.classHierarchy.push("vtkProp3D"),t.addPosition=s=>{e.position=e.position.map((i,o)=>i+s[o]),
t.modified()},t.getOrientationWXYZ=()=>{let s=ae.create();_.getRotation(s,e.rotation);let i=new Float64Array(3);return[pa(
ae.getAxisAngle(i,s)),i[0],i[1],i[2]]},t.getOrientationQuaternion=(s=[])=>_.getRotation(s,e.rotation),t.rotateX=s=>{s!==
0&&(_.rotateX(e.rotation,e.rotation,P(s)),t.modified())},t.rotateY=s=>{s!==0&&(_.rotateY(e.rotation,e.rotation,P(s)),t.modified())},
t.rotateZ=s=>{s!==0&&(_.rotateZ(e.rotation,e.rotation,P(s)),t.modified())},t.rotateWXYZ=(s,i,o,f)=>{if(s===0||i===0&&o===
0&&f===0)return;let c=P(s),u=ae.create();ae.setAxisAngle(u,[i,o,f],c);let h=new Float64Array(16);_.fromQuat(h,u),_.multiply(
e.rotation,e.rotation,h),t.modified()},t.rotateQuaternion=s=>{if(Math.abs(s[3])>=1-_y)return;let i=_.fromQuat(new Float64Array(
16),s);_.multiply(e.rotation,e.rotation,i),t.modified()},t.setOrientation=(s,i,o)=>s===e.orientation[0]&&i===e.orientation[1]&&
o===e.orientation[2]?!1:(e.orientation=[s,i,o],_.identity(e.rotation),t.rotateZ(o),t.rotateX(s),t.rotateY(i),t.modified(),
!0),t.setOrientationFromQuaternion=s=>{let i=_.create();return _.fromQuat(i,s),yt(i,e.rotation)?!1:(e.rotation=i,t.modified(),
!0)},t.setUserMatrix=s=>yt(e.userMatrix,s)?!1:(_.copy(e.userMatrix,s),t.modified(),!0),t.getMatrix=()=>(t.computeMatrix(),
e.matrix),t.computeMatrix=()=>{if(t.getMTime()>e.matrixMTime.getMTime()){_.identity(e.matrix),e.userMatrix&&_.multiply(e.
matrix,e.matrix,e.userMatrix),_.translate(e.matrix,e.matrix,e.origin),_.translate(e.matrix,e.matrix,e.position),_.multiply(
e.matrix,e.matrix,e.rotation),_.scale(e.matrix,e.matrix,e.scale),_.translate(e.matrix,e.matrix,[-e.origin[0],-e.origin[1],
-e.origin[2]]),_.transpose(e.matrix,e.matrix),e.isIdentity=!0;for(let s=0;s<4;++s)for(let i=0;i<4;++i)(s===i?1:0)!==e.matrix[s+
i*4]&&(e.isIdentity=!1);e.matrixMTime.modified()}},t.computeBounds=()=>{if(e.mapper===null){H.reset(e.bounds);return}let s=e.
mapper.getBounds();if(!s||s.length!==6||!H.isValid(s)){e.mapperBounds=s,H.reset(e.bounds),e.boundsMTime.modified();return}
if(!e.mapperBounds||!s.every((i,o)=>s[o]===e.mapperBounds[o])||t.getMTime()>e.boundsMTime.getMTime()){E.vtkDebugMacro("R\
ecomputing bounds..."),e.mapperBounds=s,t.computeMatrix();let i=new Float64Array(16);_.transpose(i,e.matrix),H.transformBounds(
s,i,e.bounds),e.boundsMTime.modified()}};let r=t.getBounds;t.getBounds=()=>(t.computeBounds(),r());let n=t.getBoundsByReference;
t.getBoundsByReference=()=>(t.computeBounds(),n()),t.getCenter=()=>H.getCenter(t.getBoundsByReference()),t.getLength=()=>H.
getLength(t.getBoundsByReference()),t.getXRange=()=>H.getXRange(t.getBoundsByReference()),t.getYRange=()=>H.getYRange(t.
getBoundsByReference()),t.getZRange=()=>H.getZRange(t.getBoundsByReference()),t.getUserMatrix=()=>e.userMatrix;function a(){
t.computeMatrix()}t.onModified(a),t.getProperty=(s=0)=>(e.properties[s]==null&&(e.properties[s]=t.makeProperty?.()),e.properties[s]),
t.getProperties=()=>(e.properties.length===0&&(e.properties[0]=t.makeProperty?.()),e.properties),t.setProperty=(s,i)=>{let[
o,f]=Number.isInteger(s)?[s,i]:[0,s];return e.properties[o]===f?!1:(e.properties[o]=f,!0)},t.getMTime=()=>{let s=e.mtime;
return e.properties.forEach(i=>{if(i!==null){let o=i.getMTime();s=o>s?o:s}}),s}}var Fy={bounds:[...H.INIT_BOUNDS],origin:[
0,0,0],position:[0,0,0],orientation:[0,0,0],rotation:null,scale:[1,1,1],properties:[],userMatrix:null,userMatrixMTime:null,
cachedProp3D:null,isIdentity:!0,matrixMTime:null};function eu(t,e,r={}){Object.assign(e,Fy,r),$r.extend(t,e,r),e.matrixMTime=
{},E.obj(e.matrixMTime),E.get(t,e,["isIdentity"]),E.getArray(t,e,["orientation"]),E.setGetArray(t,e,["origin","position",
"scale"],3),E.setGet(t,e,["properties"]),E.getArray(t,e,["bounds"],6),e.matrix=_.identity(new Float64Array(16)),e.rotation=
_.identity(new Float64Array(16)),e.userMatrix=_.identity(new Float64Array(16)),e.transform=null,my(t,e)}var Ny=E.newInstance(
eu,"vtkProp3D"),tu={newInstance:Ny,extend:eu};function Vy(t,e){e.classHierarchy.push("vtkActor");let r={...t};t.getActors=()=>[t],t.getIsOpaque=()=>{if(e.forceOpaque)
return!0;if(e.forceTranslucent)return!1;e.properties[0]||t.getProperty();let n=e.properties[0].getOpacity()>=1;return n=
n&&(!e.texture||!e.texture.isTranslucent()),n=n&&(!e.mapper||e.mapper.getIsOpaque()),n},t.hasTranslucentPolygonalGeometry=
()=>e.mapper===null?!1:(e.properties[0]||t.getProperty(),!t.getIsOpaque()),t.makeProperty=Ct.newInstance,t.getMTime=()=>{
let n=r.getMTime();if(e.backfaceProperty!==null){let a=e.backfaceProperty.getMTime();n=a>n?a:n}return n},t.getRedrawMTime=
()=>{let n=e.mtime;if(e.mapper!==null){let a=e.mapper.getMTime();n=a>n?a:n,e.mapper.getInput()!==null&&(e.mapper.getInputAlgorithm().
update(),a=e.mapper.getInput().getMTime(),n=a>n?a:n)}return n},t.getSupportsSelection=()=>e.mapper?e.mapper.getSupportsSelection():
!1,t.processSelectorPixelBuffers=(n,a)=>{e.mapper&&e.mapper.processSelectorPixelBuffers&&e.mapper.processSelectorPixelBuffers(
n,a)}}var By={mapper:null,backfaceProperty:null,forceOpaque:!1,forceTranslucent:!1};function ru(t,e,r={}){Object.assign(
e,By,r),tu.extend(t,e,r),e.boundsMTime={},E.obj(e.boundsMTime),E.setGet(t,e,["backfaceProperty","forceOpaque","forceTran\
slucent","mapper"]),Vy(t,e)}var Uy=E.newInstance(ru,"vtkActor"),nu={newInstance:Uy,extend:ru};var{vtkErrorMacro:Gy,vtkWarningMacro:ky}=E;function zy(t,e){let r=0;e.classHierarchy.push("vtkPoints"),t.getNumberOfPoints=
t.getNumberOfTuples,t.setNumberOfPoints=(s,i=3)=>{t.getNumberOfPoints()!==s&&(e.size=s*i,e.values=E.newTypedArray(e.dataType,
e.size),t.setNumberOfComponents(i),t.modified())},t.setPoint=(s,...i)=>{t.setTuple(s,i)},t.getPoint=t.getTuple,t.findPoint=
t.findTuple,t.insertNextPoint=(s,i,o)=>t.insertNextTuple([s,i,o]),t.insertPoint=(s,i)=>t.insertTuple(s,i);let n=t.getBounds;
t.getBounds=()=>(r<e.mtime&&t.computeBounds(),n());let a=t.getBoundsByReference;t.getBoundsByReference=()=>(r<e.mtime&&t.
computeBounds(),a()),t.computeBounds=()=>{if(t.getNumberOfComponents()===3){let s=t.getRange(0);e.bounds[0]=s[0],e.bounds[1]=
s[1];let i=t.getRange(1);e.bounds[2]=i[0],e.bounds[3]=i[1];let o=t.getRange(2);e.bounds[4]=o[0],e.bounds[5]=o[1]}else if(t.
getNumberOfComponents()===2){let s=t.getRange(0);e.bounds[0]=s[0],e.bounds[1]=s[1];let i=t.getRange(1);e.bounds[2]=i[0],
e.bounds[3]=i[1],e.bounds[4]=0,e.bounds[5]=0}else Gy(`getBounds called on an array with components of ${t.getNumberOfComponents()}`),
Ht(e.bounds);r=E.getCurrentGlobalMTime()}}var au={empty:!0,numberOfComponents:3,dataType:ee.FLOAT,bounds:[1,-1,1,-1,1,-1]};
function su(t,e,r={}){Object.assign(e,au,r);let n=r.numberOfComponents==null||r.numberOfComponents<2,{numberOfComponents:a}=r;
n&&(a=au.numberOfComponents);let s={...r,numberOfComponents:a},i=r.size??r.values?.length;if(n&&i!=null&&i%a!==0){let o=Math.
floor(i/a)*a;ky(`Dropping ${i-o} incomplete point component(s)`),s.size=o}Y.extend(t,e,s),E.getArray(t,e,["bounds"],6),zy(
t,e)}var Hy=E.newInstance(su,"vtkPoints"),ut={newInstance:Hy,extend:su};function Wy(t,e){e.classHierarchy.push("vtkCell"),t.initialize=(r,n=null)=>{if(n){e.pointsIds=n;let a=e.points.getData();
a.length!==3*e.pointsIds.length&&(a=E.newTypedArray(r.getDataType(),3*e.pointsIds.length));let s=r.getData();e.pointsIds.
forEach((i,o)=>{let f=3*i,c=3*o;a[c]=s[f],a[++c]=s[++f],a[++c]=s[++f]}),e.points.setData(a)}else{e.points=r,e.pointsIds=
new Array(r.getNumberOfPoints());for(let a=r.getNumberOfPoints()-1;a>=0;--a)e.pointsIds[a]=a}},t.getBounds=()=>e.points.
getBounds(),t.getLength2=()=>{let r=H.getLengths(t.getBounds());return r[0]*r[0]+r[1]*r[1]+r[2]*r[2]},t.getParametricDistance=
r=>{let n,a=0;for(let s=0;s<3;s++)r[s]<0?n=-r[s]:r[s]>1?n=r[s]-1:n=0,n>a&&(a=n);return a},t.getNumberOfPoints=()=>e.points.
getNumberOfPoints(),t.deepCopy=r=>{r.initialize(e.points,e.pointsIds)},t.getCellDimension=()=>{},t.intersectWithLine=(r,n,a,s,i,o,f)=>{},
t.evaluatePosition=(r,n,a,s,i,o)=>{E.vtkErrorMacro("vtkCell.evaluatePosition is not implemented.")}}var Ay={bounds:[-1,-1,
-1,-1,-1,-1],pointsIds:[]};function iu(t,e,r={}){Object.assign(e,Ay,r),E.obj(t,e),e.points||(e.points=ut.newInstance()),
E.get(t,e,["points","pointsIds"]),Wy(t,e)}var jy=E.newInstance(iu,"vtkCell"),Ee={newInstance:jy,extend:iu};function Ky(t,e){let r=e;for(e>=t.array.length&&(r+=t.array.length);r>t.array.length;)t.array.push({ncells:0,cells:null});
t.array.length=r}function $y(t,e){e.classHierarchy.push("vtkCellLinks"),t.buildLinks=r=>{let n=r.getPoints().getNumberOfPoints(),
a=r.getNumberOfCells(),s=new Uint32Array(n);if(r.isA("vtkPolyData")){for(let i=0;i<a;++i){let{cellPointIds:o}=r.getCellPoints(
i);o.forEach(f=>{t.incrementLinkCount(f)})}t.allocateLinks(n),e.maxId=n-1;for(let i=0;i<a;++i){let{cellPointIds:o}=r.getCellPoints(
i);o.forEach(f=>{t.insertCellReference(f,s[f]++,i)})}}else{for(let i=0;i<a;i++)Ee.newInstance().getPointsIds().forEach(o=>{
t.incrementLinkCount(o)});t.allocateLinks(n),e.maxId=n-1;for(let i=0;i<a;++i)Ee.newInstance().getPointsIds().forEach(o=>{
t.insertCellReference(o,s[o]++,i)})}},t.allocate=(r,n=1e3)=>{let a=new Array(r);for(let s=0;s<r;++s)a[s]={ncells:0,cells:null};
e.array=a,e.extend=n,e.maxId=-1},t.initialize=()=>{e.array=null},t.getLink=r=>e.array[r],t.getNcells=r=>e.array[r].ncells,
t.getCells=r=>e.array[r].cells,t.insertNextPoint=r=>{e.array.push({ncells:r,cells:Array(r)}),++e.maxId},t.insertNextCellReference=
(r,n)=>{e.array[r].cells[e.array[r].ncells++]=n},t.deletePoint=r=>{e.array[r].ncells=0,e.array[r].cells=null},t.removeCellReference=
(r,n)=>{e.array[n].cells=e.array[n].cells.filter(a=>a!==r),e.array[n].ncells=e.array[n].cells.length},t.addCellReference=
(r,n)=>{e.array[n].cells[e.array[n].ncells++]=r},t.resizeCellList=(r,n)=>{e.array[r].cells.length=n},t.squeeze=()=>{Ky(e,
e.maxId+1)},t.reset=()=>{e.maxId=-1},t.deepCopy=r=>{e.array=[...r.array],e.extend=r.extend,e.maxId=r.maxId},t.incrementLinkCount=
r=>{++e.array[r].ncells},t.allocateLinks=r=>{for(let n=0;n<r;++n)e.array[n].cells=new Array(e.array[n].ncells)},t.insertCellReference=
(r,n,a)=>{e.array[r].cells[n]=a}}var Xy={array:null,maxId:0,extend:0};function ou(t,e,r={}){Object.assign(e,Xy,r),E.obj(
t,e),$y(t,e)}var Yy=E.newInstance(ou,"vtkCellLinks"),fu={newInstance:Yy,extend:ou};var K={VTK_EMPTY_CELL:0,VTK_VERTEX:1,VTK_POLY_VERTEX:2,VTK_LINE:3,VTK_POLY_LINE:4,VTK_TRIANGLE:5,VTK_TRIANGLE_STRIP:6,VTK_POLYGON:7,
VTK_PIXEL:8,VTK_QUAD:9,VTK_TETRA:10,VTK_VOXEL:11,VTK_HEXAHEDRON:12,VTK_WEDGE:13,VTK_PYRAMID:14,VTK_PENTAGONAL_PRISM:15,VTK_HEXAGONAL_PRISM:16,
VTK_QUADRATIC_EDGE:21,VTK_QUADRATIC_TRIANGLE:22,VTK_QUADRATIC_QUAD:23,VTK_QUADRATIC_POLYGON:36,VTK_QUADRATIC_TETRA:24,VTK_QUADRATIC_HEXAHEDRON:25,
VTK_QUADRATIC_WEDGE:26,VTK_QUADRATIC_PYRAMID:27,VTK_BIQUADRATIC_QUAD:28,VTK_TRIQUADRATIC_HEXAHEDRON:29,VTK_QUADRATIC_LINEAR_QUAD:30,
VTK_QUADRATIC_LINEAR_WEDGE:31,VTK_BIQUADRATIC_QUADRATIC_WEDGE:32,VTK_BIQUADRATIC_QUADRATIC_HEXAHEDRON:33,VTK_BIQUADRATIC_TRIANGLE:34,
VTK_CUBIC_LINE:35,VTK_CONVEX_POINT_SET:41,VTK_POLYHEDRON:42,VTK_PARAMETRIC_CURVE:51,VTK_PARAMETRIC_SURFACE:52,VTK_PARAMETRIC_TRI_SURFACE:53,
VTK_PARAMETRIC_QUAD_SURFACE:54,VTK_PARAMETRIC_TETRA_REGION:55,VTK_PARAMETRIC_HEX_REGION:56,VTK_HIGHER_ORDER_EDGE:60,VTK_HIGHER_ORDER_TRIANGLE:61,
VTK_HIGHER_ORDER_QUAD:62,VTK_HIGHER_ORDER_POLYGON:63,VTK_HIGHER_ORDER_TETRAHEDRON:64,VTK_HIGHER_ORDER_WEDGE:65,VTK_HIGHER_ORDER_PYRAMID:66,
VTK_HIGHER_ORDER_HEXAHEDRON:67,VTK_LAGRANGE_CURVE:68,VTK_LAGRANGE_TRIANGLE:69,VTK_LAGRANGE_QUADRILATERAL:70,VTK_LAGRANGE_TETRAHEDRON:71,
VTK_LAGRANGE_HEXAHEDRON:72,VTK_LAGRANGE_WEDGE:73,VTK_LAGRANGE_PYRAMID:74,VTK_NUMBER_OF_CELL_TYPES:75},pn=["vtkEmptyCell",
"vtkVertex","vtkPolyVertex","vtkLine","vtkPolyLine","vtkTriangle","vtkTriangleStrip","vtkPolygon","vtkPixel","vtkQuad","\
vtkTetra","vtkVoxel","vtkHexahedron","vtkWedge","vtkPyramid","vtkPentagonalPrism","vtkHexagonalPrism","UnknownClass","Un\
knownClass","UnknownClass","UnknownClass","vtkQuadraticEdge","vtkQuadraticTriangle","vtkQuadraticQuad","vtkQuadraticTetr\
a","vtkQuadraticHexahedron","vtkQuadraticWedge","vtkQuadraticPyramid","vtkBiQuadraticQuad","vtkTriQuadraticHexahedron","\
vtkQuadraticLinearQuad","vtkQuadraticLinearWedge","vtkBiQuadraticQuadraticWedge","vtkBiQuadraticQuadraticHexahedron","vt\
kBiQuadraticTriangle","vtkCubicLine","vtkQuadraticPolygon","UnknownClass","UnknownClass","UnknownClass","UnknownClass","\
vtkConvexPointSet","UnknownClass","UnknownClass","UnknownClass","UnknownClass","UnknownClass","UnknownClass","UnknownCla\
ss","UnknownClass","UnknownClass","vtkParametricCurve","vtkParametricSurface","vtkParametricTriSurface","vtkParametricQu\
adSurface","vtkParametricTetraRegion","vtkParametricHexRegion","UnknownClass","UnknownClass","UnknownClass","vtkHigherOr\
derEdge","vtkHigherOrderTriangle","vtkHigherOrderQuad","vtkHigherOrderPolygon","vtkHigherOrderTetrahedron","vtkHigherOrd\
erWedge","vtkHigherOrderPyramid","vtkHigherOrderHexahedron"];function qy(t){return t<pn.length?pn[t]:"UnknownClass"}function Zy(t){return pn.findIndex(t)}function Qy(t){return t<K.VTK_QUADRATIC_EDGE||
t===K.VTK_CONVEX_POINT_SET||t===K.VTK_POLYHEDRON}function Jy(t){return t===K.VTK_TRIANGLE_STRIP||t===K.VTK_POLY_LINE||t===
K.VTK_POLY_VERTEX}var Iy={getClassNameFromTypeId:qy,getTypeIdFromClassName:Zy,isLinear:Qy,hasSubCells:Jy};function Py(t,e){
e.classHierarchy.push("vtkCellTypes"),t.allocate=(r=512,n=1e3)=>{e.size=r>0?r:1,e.extend=n>0?n:1,e.maxId=-1,e.typeArray=
new Uint8Array(r),e.locationArray=new Uint32Array(r)},t.insertCell=(r,n,a)=>{e.typeArray[r]=n,e.locationArray[r]=a,r>e.maxId&&
(e.maxId=r)},t.insertNextCell=(r,n)=>(t.insertCell(++e.maxId,r,n),e.maxId),t.setCellTypes=(r,n,a)=>{e.size=r,e.typeArray=
n,e.locationArray=a,e.maxId=r-1},t.getCellLocation=r=>e.locationArray[r],t.deleteCell=r=>{e.typeArray[r]=K.VTK_EMPTY_CELL},
t.getNumberOfTypes=()=>e.maxId+1,t.isType=r=>{let n=t.getNumberOfTypes();for(let a=0;a<n;++a)if(r===t.getCellType(a))return!0;
return!1},t.insertNextType=r=>t.insertNextCell(r,-1),t.getCellType=r=>e.typeArray[r],t.reset=()=>{e.maxId=-1},t.deepCopy=
r=>{t.allocate(r.getSize(),r.getExtend()),e.typeArray.set(r.getTypeArray()),e.locationArray.set(r.getLocationArray()),e.
maxId=r.getMaxId()}}var by={size:0,maxId:-1,extend:1e3};function cu(t,e,r={}){Object.assign(e,by,r),E.obj(t,e),E.get(t,e,
["size","maxId","extend"]),E.getArray(t,e,["typeArray","locationArray"]),Py(t,e)}var ex=E.newInstance(cu,"vtkCellTypes"),
uu={newInstance:ex,extend:cu,...Iy};var ns={NO_INTERSECTION:0,YES_INTERSECTION:1,ON_LINE:2},as={IntersectionState:ns};var{IntersectionState:vn}=as;function wt(t,e,r,n=null){let a={t:Number.MIN_VALUE,distance:0},s=[],i;s[0]=r[0]-e[0],s[1]=
r[1]-e[1],s[2]=r[2]-e[2];let o=s[0]*(t[0]-e[0])+s[1]*(t[1]-e[1])+s[2]*(t[2]-e[2]),f=U(s,s),c=1e-5*o;return f!==0&&(a.t=o/
f),c<0&&(c=-c),-c<f&&f<c||f<=0||a.t<0?i=e:a.t>1?i=r:(i=s,s[0]=e[0]+a.t*s[0],s[1]=e[1]+a.t*s[1],s[2]=e[2]+a.t*s[2]),n&&(n[0]=
i[0],n[1]=i[1],n[2]=i[2]),a.distance=ge(i,t),a}function gu(t,e,r,n,a,s){let i=[],o=[],f=[];a[0]=0,s[0]=0,b(e,t,i),b(n,r,
o),b(r,t,f);let c=[U(i,i),-U(i,o),-U(i,o),U(o,o)],u=[];if(u[0]=U(i,f),u[1]=-U(o,f),ya(c,u,2)===0){let h=Number.MAX_VALUE,
l=[t,e,r,n],p=[r,r,t,t],x=[n,n,e,e],g=[s[0],s[0],a[0],a[0]],y=[a[0],a[0],s[0],s[0]],C;for(let M=0;M<4;M++)C=wt(l[M],p[M],
x[M]),C.distance<h&&(h=C.distance,g[M]=C.t,y[M]=M%2);return vn.ON_LINE}return a[0]=u[0],s[0]=u[1],a[0]>=0&&a[0]<=1&&s[0]>=
0&&s[0]<=1?vn.YES_INTERSECTION:vn.NO_INTERSECTION}var tx={distanceToLine:wt,intersection:gu};function rx(t,e){e.classHierarchy.
push("vtkLine");function r(n){return n>=0&&n<=1}t.getCellDimension=()=>1,t.intersectWithLine=(n,a,s,i,o)=>{let f={intersect:0,
t:Number.MAX_VALUE,subId:0,betweenPoints:null};o[1]=0,o[2]=0;let c=[],u=[],h=[];e.points.getPoint(0,u),e.points.getPoint(
1,h);let l=[],p=[],x=gu(n,a,u,h,l,p);if(f.t=l[0],f.betweenPoints=r(f.t),o[0]=p[0],x===vn.YES_INTERSECTION){for(let g=0;g<
3;g++)i[g]=u[g]+o[0]*(h[g]-u[g]),c[g]=n[g]+f.t*(a[g]-n[g]);if(ge(i,c)<=s*s)return f.intersect=1,f}else{let g;if(f.t<0)return g=
wt(n,u,h,i),g.distance<=s*s&&(f.t=0,f.intersect=1,f.betweenPoints=!0),f;if(f.t>1)return g=wt(a,u,h,i),g.distance<=s*s&&(f.
t=1,f.intersect=1,f.betweenPoints=!0),f;if(o[0]<0)return o[0]=0,g=wt(u,n,a,i),f.t=g.t,g.distance<=s*s&&(f.intersect=1),f;
if(o[0]>1)return o[0]=1,g=wt(h,n,a,i),f.t=g.t,g.distance<=s*s&&(f.intersect=1),f}return f},t.evaluateLocation=(n,a,s)=>{
let i=[],o=[];e.points.getPoint(0,i),e.points.getPoint(1,o);for(let f=0;f<3;f++)a[f]=i[f]+n[0]*(o[f]-i[f]);s[0]=1-n[0],s[1]=
n[0]},t.evaluateOrientation=(n,a,s)=>e.orientations?(ae.slerp(a,e.orientations[0],e.orientations[1],n[0]),s[0]=1-n[0],s[1]=
n[0],!0):!1}var nx={orientations:null};function hu(t,e,r={}){Object.assign(e,nx,r),Ee.extend(t,e,r),E.setGet(t,e,["orien\
tations"]),rx(t,e)}var ax=E.newInstance(hu,"vtkLine"),ne={newInstance:ax,extend:hu,...tx,...as};function sx(t,e){e.classHierarchy.push("vtkPointSet"),e.points?e.points=le(e.points):e.points=ut.newInstance(),t.getNumberOfPoints=
()=>e.points.getNumberOfPoints(),t.getBounds=()=>e.points?.getBounds(),t.computeBounds=()=>{e.points?.computeBounds()};let r=t.
shallowCopy;t.shallowCopy=(s,i=!1)=>{r(s,i),e.points=ut.newInstance(),e.points.shallowCopy(s.getPoints())};let n=t.getMTime;
t.getMTime=()=>{let s=n();return Math.max(s,e.points?.getMTime()??s)};let a=t.initialize;t.initialize=()=>(e.points?.initialize(),
a())}var ix={};function lu(t,e,r={}){Object.assign(e,ix,r),_e.extend(t,e,r),E.setGet(t,e,["points"]),sx(t,e)}var ox=E.newInstance(
lu,"vtkPointSet"),pu={newInstance:ox,extend:lu};function fx(t,e){e.classHierarchy.push("vtkPolyLine");let r=ne.newInstance();r.getPoints().setNumberOfPoints(2),t.getCellDimension=
()=>1,t.intersectWithLine=(n,a,s,i,o,f,c)=>{let u={intersect:0,t:Number.MAX_VALUE,subId:0,betweenPoints:null},h=t.getNumberOfPoints()-
1,l=Number.MAX_VALUE,p=[0,0,0],x=[0,0,0];for(let g=0;g<h;g++){let y=[0,0,0];r.getPoints().getData().set(e.points.getData().
subarray(3*g,3*(g+2)));let C=r.intersectWithLine(s,i,o,f,c);if(C.intersect===1&&C.t<=u.t+o&&C.t>=n&&C.t<=a){u.intersect=
1;let M=r.getParametricDistance(y);if(M<l||M===l&&C.t<u.t){u.subId=g,u.t=C.t,l=M;for(let v=0;v<3;v++)p[v]=f[v],x[v]=y[v]}}}
return u},t.evaluateLocation=(n,a,s,i)=>(r.getPoints().getData().set(e.points.getData().subarray(3*n,3*(n+2))),r.evaluateLocation(
a,s,i)),t.evaluateOrientation=(n,a,s,i)=>(e.orientations?r.setOrientations([e.orientations[n],e.orientations[n+1]]):r.setOrientations(
null),r.evaluateOrientation(a,s,i)),t.getDistancesToFirstPoint=()=>{let n=e.distancesTime.getMTime();if(n<e.points.getMTime()||
n<t.getMTime()){let a=t.getNumberOfPoints();if(e.distances?e.distances.length=a:e.distances=new Array(a),a>0){let s=new Array(
3),i=new Array(3),o=0;e.distances[0]=o,e.points.getPoint(0,s);for(let f=1;f<a;++f)e.points.getPoint(f,i),o+=e.distanceFunction(
s,i),e.distances[f]=o,k.copy(s,i)}e.distancesTime.modified()}return e.distances},t.findPointIdAtDistanceFromFirstPoint=n=>{
let a=t.getDistancesToFirstPoint();if(a.length<2)return-1;let s=0,i=a.length-1;if(n<a[s]||n>a[i]||a[i]===0)return-1;for(;i-
s>1;){let o=Math.floor((s+i)/2);a[o]<=n?s=o:i=o}return s}}var cx={orientations:null,distanceFunction:k.dist};function vu(t,e,r={}){
Object.assign(e,cx,r),Ee.extend(t,e,r),E.setGet(t,e,["orientations","distanceFunction"]),e.distancesTime={},E.obj(e.distancesTime,
{mtime:0}),fx(t,e)}var ux=E.newInstance(vu,"vtkPolyLine"),Tu={newInstance:ux,extend:vu};function gx(t,e){e.classHierarchy.push("vtkPriorityQueue"),t.push=(r,n)=>{let a=e.elements.findIndex(s=>s.priority>r);e.
elements.splice(a,0,{priority:r,element:n})},t.pop=()=>e.elements.length>0?e.elements.shift().element:null,t.deleteById=
r=>{e.elements=e.elements.filter(({element:n})=>n.id!==r)},t.length=()=>e.elements.length}var hx={elements:[]};function yu(t,e,r={}){
Object.assign(e,hx,r),E.obj(t,e),gx(t,e)}var lx=E.newInstance(yu,"vtkPriorityQueue"),xu={newInstance:lx,extend:yu};var Cu=11920929e-14,Su=1e-8,be={FAILURE:-1,OUTSIDE:0,INSIDE:1,INTERSECTION:2,ON_LINE:3};function Mu(t,e,r,n,a){return(n[t]-r[t])*(a[e]-r[e])-(a[t]-r[t])*(n[e]-r[e])}function px(t,e,r,n){if(t[0]<r[0]||t[0]>r[1]||
t[1]<r[2]||t[1]>r[3]||t[2]<r[4]||t[2]>r[5])return be.OUTSIDE;if(ve(n)<=11920929e-14)return be.FAILURE;let a=Su*((r[1]-r[0])*
(r[1]-r[0])+(r[3]-r[2])*(r[3]-r[2])+(r[5]-r[4])*(r[5]-r[4]));a*=a,a=a===0?Cu:a;let s=[],i=[];for(let u=0;u<e.length;){if(s[0]=
e[u++],s[1]=e[u++],s[2]=e[u++],ge(t,s)<=a)return be.INSIDE;let{distance:h,t:l}=ne.distanceToLine(t,s,i);if(h<=a&&l>0&&l<
1)return be.INSIDE}let o,f;Math.abs(n[0])>Math.abs(n[1])?Math.abs(n[0])>Math.abs(n[2])?(o=1,f=2):(o=0,f=1):Math.abs(n[1])>
Math.abs(n[2])?(o=0,f=2):(o=0,f=1);let c=0;for(let u=0;u<e.length;)s[0]=e[u++],s[1]=e[u++],s[2]=e[u++],u<e.length?(i[0]=
e[u],i[1]=e[u+1],i[2]=e[u+2]):(i[0]=e[0],i[1]=e[1],i[2]=e[2]),s[f]<=t[f]?i[f]>t[f]&&Mu(o,f,s,i,t)>0&&++c:i[f]<=t[f]&&Mu(
o,f,s,i,t)<0&&--c;return c===0?be.OUTSIDE:be.INSIDE}function vx(t,e,r){let n=t.length,a=[];e.getPoint(t[0],a),r[0]=a[0],
r[1]=a[0],r[2]=a[1],r[3]=a[1],r[4]=a[2],r[5]=a[2];for(let i=1;i<n;i++)e.getPoint(t[i],a),H.addPoint(r,...a);let s=H.getLengths(
r);return U(s,s)}function Tx(t,e,r){r.length=3,r[0]=0,r[1]=0,r[2]=0;let n=[],a=[],s=[],i=[],o=[];e.getPoint(t[0],n),e.getPoint(
t[1],a);for(let f=2;f<t.length;f++){e.getPoint(t[f],s),b(s,a,i),b(n,a,o);let c=[0,0,0];ue(i,o,c),ke(r,c,r),[a,s]=[s,a]}return ve(
r)}function yx(t,e,r=[0,0,0]){r[0]=0,r[1]=0,r[2]=0;let n=t.length,a=[];for(let s=0;s<n;s++)e.getPoint(t[s],a),r[0]+=a[0],
r[1]+=a[1],r[2]+=a[2];return r[0]/=n,r[1]/=n,r[2]/=n,r}var xx={PolygonWithPointIntersectionState:be,pointInPolygon:px,getBounds:vx,
getNormal:Tx,computeCentroid:yx};function Cx(t,e){e.classHierarchy.push("vtkPolygon");function r(){let o=[0,0,0],f=[0,0,
0];e.normal=[0,0,0];let c=[...e.firstPoint.point],u=e.firstPoint;for(let h=0;h<e.pointCount;h++){b(u.point,c,o),b(u.next.
point,c,f);let l=[0,0,0];ue(o,f,l),ke(e.normal,l,e.normal),u=u.next}return ve(e.normal)}function n(o){let f=[0,0,0],c=[0,
0,0],u=[0,0,0],h=[0,0,0];b(o.point,o.previous.point,f),b(o.next.point,o.point,c),b(o.previous.point,o.next.point,u),ue(f,
c,h);let l=U(h,e.normal);if(l<=0)return-1;let p=Me(f)+Me(c)+Me(u);return p*p/l}function a(o){if(e.pointCount<=3)return!0;
let f=o.previous,c=o.next,u=[0,0,0];b(c.point,f.point,u);let h=[0,0,0];if(ue(u,e.normal,h),ve(h),Me(h)===0)return!1;let l=Fe.
evaluate(h,f.point,c.next.point),p=l>1e-6?1:l<-1e-6?-1:0,x=p<0?1:0;for(let g=c.next.next;g.id!==f.id;g=g.next){let y=g.previous;
l=Fe.evaluate(h,f.point,g.point);let C=l>1e-6?1:l<-1e-6?-1:0;if(C!==p){if(x||(x=C<=0?1:0),ne.intersection(f.point,c.point,
g.point,y.point,[0],[0])===ns.YES_INTERSECTION)return!1;p=C}}return x===1}function s(o,f){e.pointCount-=1;let c=o.previous,
u=o.next;e.tris=e.tris.concat(o.point),e.tris=e.tris.concat(u.point),e.tris=e.tris.concat(c.point),c.next=u,u.previous=c,
f.deleteById(c.id),f.deleteById(u.id);let h=n(c);h>0&&f.push(h,c);let l=n(u);l>0&&f.push(l,u),o.id===e.firstPoint.id&&(e.
firstPoint=u)}function i(){r();let o=xu.newInstance(),f=e.firstPoint;for(let c=0;c<e.pointCount;c++){let u=n(f);u>0&&o.push(
u,f),f=f.next}for(;e.pointCount>2&&o.length()>0;)if(e.pointCount===o.length())s(o.pop(),o);else{let c=o.pop();a(c)&&s(c,
o)}return e.pointCount<=2}t.triangulate=()=>e.firstPoint?i():null,t.setPoints=o=>{e.pointCount=o.length,e.firstPoint={id:0,
point:o[0],next:null,previous:null};let f=e.firstPoint;for(let c=1;c<e.pointCount;c++)f.next={id:c,point:o[c],next:null,
previous:f},f=f.next;e.firstPoint.previous=f,f.next=e.firstPoint},t.getPointArray=()=>e.tris}var Sx={firstPoint:null,pointCount:0,
tris:[]};function du(t,e,r={}){Object.assign(e,Sx,r),E.obj(t,e),Cx(t,e)}var Mx=E.newInstance(du,"vtkPolygon"),Eu={newInstance:Mx,
extend:du,...xx};function ss(t,e,r,n){let a=r[0]-e[0],s=r[1]-e[1],i=r[2]-e[2],o=t[0]-e[0],f=t[1]-e[1],c=t[2]-e[2];n[0]=s*c-i*f,n[1]=i*o-a*
c,n[2]=a*f-s*o}function er(t,e,r,n){ss(t,e,r,n);let a=Math.sqrt(n[0]*n[0]+n[1]*n[1]+n[2]*n[2]);a!==0&&(n[0]/=a,n[1]/=a,n[2]/=
a)}function Ru(t){t[0]=-1,t[1]=1,t[2]=0,t[3]=-1,t[4]=0,t[5]=1}function dx(t,e,r,n,a,s,i=1e-6){let o=!1,f=[],c=[],u=[],h=[],
l=[];er(t,e,r,h),er(n,a,s,l);let p=-U(h,t),x=-U(l,n),g=[U(l,t)+x,U(l,e)+x,U(l,r)+x];if(g[0]*g[1]>i&&g[0]*g[2]>i)return{intersect:!1,
coplanar:o,pt1:f,pt2:c,surfaceId:u};let y=[U(h,n)+p,U(h,a)+p,U(h,s)+p];if(y[0]*y[1]>i&&y[0]*y[2]>i)return{intersect:!1,coplanar:o,
pt1:f,pt2:c,surfaceId:u};if(Math.abs(h[0]-l[0])<1e-9&&Math.abs(h[1]-l[1])<1e-9&&Math.abs(h[2]-l[2])<1e-9&&Math.abs(p-x)<
1e-9)return o=!0,{intersect:!1,coplanar:o,pt1:f,pt2:c,surfaceId:u};let C=[t,e,r],M=[n,a,s],v=U(h,l),T=(p-x*v)/(v*v-1),S=(x-
p*v)/(v*v-1),d=[T*h[0]+S*l[0],T*h[1]+S*l[1],T*h[2]+S*l[2]],R=ue(h,l,[]);ve(R);let w=0,L=0,O=[],D=[],m=50,V=50;for(let B=0;B<
3;B++){let A=B,q=(B+1)%3,ie=Fe.intersectWithLine(C[A],C[q],n,l);ie.intersection&&ie.t>0-i&&ie.t<1+i&&(ie.t<1+i&&ie.t>1-i&&
(m=w),O[w++]=U(ie.x,R)-U(d,R));let Z=Fe.intersectWithLine(M[A],M[q],t,h);Z.intersection&&Z.t>0-i&&Z.t<1+i&&(Z.t<1+i&&Z.t>
1-i&&(V=L),D[L++]=U(Z.x,R)-U(d,R))}if(w>2){w--;let B=O[2];O[2]=O[m],O[m]=B}if(L>2){L--;let B=D[2];D[2]=D[V],D[V]=B}if(w!==
2||L!==2)return{intersect:!1,coplanar:o,pt1:f,pt2:c,surfaceId:u};if(Number.isNaN(O[0])||Number.isNaN(O[1])||Number.isNaN(
D[0])||Number.isNaN(D[1]))return{intersect:!1,coplanar:o,pt1:f,pt2:c,surfaceId:u};if(O[0]>O[1]){let B=O[1];O[1]=O[0],O[0]=
B}if(D[0]>D[1]){let B=D[1];D[1]=D[0],D[0]=B}let F,G;return O[1]<D[0]||D[1]<O[0]?{intersect:!1,coplanar:o,pt1:f,pt2:c,surfaceId:u}:
(O[0]<D[0]?O[1]<D[1]?(u[0]=2,u[1]=1,F=D[0],G=O[1]):(u[0]=2,u[1]=2,F=D[0],G=D[1]):O[1]<D[1]?(u[0]=1,u[1]=1,F=O[0],G=O[1]):
(u[0]=1,u[1]=2,F=O[0],G=D[1]),mr(d,R,F,f),mr(d,R,G,c),{intersect:!0,coplanar:o,pt1:f,pt2:c,surfaceId:u})}var Ex=[[0,1],[
1,2],[2,0]],Rx=[1,2,4],wx=[[-1,-1,-1,-1,-1,-1,-1],[0,2,100,-1,-1,-1,-1],[1,0,101,-1,-1,-1,-1],[1,2,100,1,100,101,-1],[2,
1,102,-1,-1,-1,-1],[0,1,102,102,100,0,-1],[0,101,2,2,101,102,-1],[100,101,102,-1,-1,-1,-1]],Ox={computeNormalDirection:ss,
computeNormal:er,interpolationDerivs:Ru,intersectWithTriangle:dx};function Lx(t,e){e.classHierarchy.push("vtkTriangle"),
t.getCellDimension=()=>2,t.intersectWithLine=(r,n,a,s,i)=>{let o={subId:0,t:Number.MAX_VALUE,intersect:0,betweenPoints:!1};
i[2]=0;let f=[],c=a*a,u=[],h=[],l=[];e.points.getPoint(0,u),e.points.getPoint(1,h),e.points.getPoint(2,l);let p=[],x=[];
if(er(u,h,l,p),p[0]!==0||p[1]!==0||p[2]!==0){let v=Fe.intersectWithLine(r,n,u,p);if(o.betweenPoints=v.betweenPoints,o.t=
v.t,s[0]=v.x[0],s[1]=v.x[1],s[2]=v.x[2],!v.intersection)return i[0]=0,i[1]=0,o.intersect=0,o;let T=t.evaluatePosition(s,
f,i,x);if(T.evaluation>=0)return T.dist2<=c?(o.intersect=1,o):(o.intersect=T.evaluation,o)}let g=ge(u,h),y=ge(h,l),C=ge(
l,u);e.line||(e.line=ne.newInstance()),g>y&&g>C?(e.line.getPoints().setPoint(0,u),e.line.getPoints().setPoint(1,h)):y>C&&
y>g?(e.line.getPoints().setPoint(0,h),e.line.getPoints().setPoint(1,l)):(e.line.getPoints().setPoint(0,l),e.line.getPoints().
setPoint(1,u));let M=e.line.intersectWithLine(r,n,a,s,i);if(o.betweenPoints=M.betweenPoints,o.t=M.t,M.intersect){let v=[],
T=[],S=[];for(let d=0;d<3;d++)v[d]=u[d]-l[d],T[d]=h[d]-l[d],S[d]=s[d]-l[d];return i[0]=U(S,v)/C,i[1]=U(S,T)/y,o.intersect=
1,o}return i[0]=0,i[1]=0,o.intersect=0,o},t.evaluatePosition=(r,n,a,s)=>{let i={subId:0,dist2:0,evaluation:-1},o,f,c=[],
u=[],h=[],l=[],p,x=[],g=[],y=[],C=0,M=0,v=[],T,S,d,R=[],w=[],L=[],O=[];i.subId=0,a[2]=0,e.points.getPoint(1,c),e.points.
getPoint(2,u),e.points.getPoint(0,h),ss(c,u,h,l),Fe.generalizedProjectPoint(r,c,l,O);let D=0;for(o=0;o<3;o++)l[o]<0?p=-l[o]:
p=l[o],p>D&&(D=p,M=o);for(f=0,o=0;o<3;o++)o!==M&&(v[f++]=o);for(o=0;o<2;o++)x[o]=O[v[o]]-h[v[o]],g[o]=c[v[o]]-h[v[o]],y[o]=
u[v[o]]-h[v[o]];if(C=I(g,y),C===0)return a[0]=0,a[1]=0,i.evaluation=-1,i;if(a[0]=I(x,y)/C,a[1]=I(g,x)/C,s[0]=1-(a[0]+a[1]),
s[1]=a[0],s[2]=a[1],s[0]>=0&&s[0]<=1&&s[1]>=0&&s[1]<=1&&s[2]>=0&&s[2]<=1)n&&(i.dist2=ge(O,r),n[0]=O[0],n[1]=O[1],n[2]=O[2]),
i.evaluation=1;else{if(n)if(s[1]<0&&s[2]<0)for(T=ge(r,h),S=ne.distanceToLine(r,c,h,w),d=ne.distanceToLine(r,h,u,L),T<S?(i.
dist2=T,R=h):(i.dist2=S,R=w),d<i.dist2&&(i.dist2=d,R=L),o=0;o<3;o++)n[o]=R[o];else if(s[2]<0&&s[0]<0)for(T=ge(r,c),S=ne.
distanceToLine(r,c,h,w),d=ne.distanceToLine(r,c,u,L),T<S?(i.dist2=T,R=c):(i.dist2=S,R=w),d<i.dist2&&(i.dist2=d,R=L),o=0;o<
3;o++)n[o]=R[o];else if(s[1]<0&&s[0]<0)for(T=ge(r,u),S=ne.distanceToLine(r,u,h,w),d=ne.distanceToLine(r,c,u,L),T<S?(i.dist2=
T,R=u):(i.dist2=S,R=w),d<i.dist2&&(i.dist2=d,R=L),o=0;o<3;o++)n[o]=R[o];else s[0]<0?i.dist2=ne.distanceToLine(r,c,u,n).distance:
s[1]<0?i.dist2=ne.distanceToLine(r,u,h,n).distance:s[2]<0&&(i.dist2=ne.distanceToLine(r,c,h,n).distance);i.evaluation=0}
return i},t.evaluateLocation=(r,n,a)=>{let s=[],i=[],o=[];e.points.getPoint(0,s),e.points.getPoint(1,i),e.points.getPoint(
2,o);let f=1-r[0]-r[1];for(let c=0;c<3;c++)n[c]=s[c]*f+i[c]*r[0]+o[c]*r[1];a[0]=f,a[1]=r[0],a[2]=r[1]},t.getParametricDistance=
r=>{let n,a=0,s=[];s[0]=r[0],s[1]=r[1],s[2]=1-r[0]-r[1];for(let i=0;i<3;i++)s[i]<0?n=-s[i]:s[i]>1?n=s[i]-1:n=0,n>a&&(a=n);
return a},t.derivatives=(r,n,a,s,i)=>{let o=e.points.getPoint(0),f=e.points.getPoint(1),c=e.points.getPoint(2),u=[],h=[],
l=[],p=[];er(o,f,c,u),b(f,o,h),b(c,o,p),ue(u,h,l);let x=ve(h);if(x<=0||ve(l)<=0){for(let S=0;S<s;S++)for(let d=0;d<3;d++)
i[S*s+d]=0;return}let g=[0,0],y=[x,0],C=[U(p,h),U(p,l)],M=new Array(6);Ru(M);let v=[y[0]-g[0],y[1]-g[1],C[0]-g[0],C[1]-g[1]],
T=E.newTypedArray(fe.Float64Array,4);Vr(v,T,2);for(let S=0;S<s;S++){let d=0,R=0;for(let O=0;O<3;O++)d+=M[O]*a[s*O+S],R+=
M[3+O]*a[s*O+S];let w=d*T[0]+R*T[1],L=d*T[2]+R*T[3];i[3*S]=w*h[0]+L*l[0],i[3*S+1]=w*h[1]+L*l[1],i[3*S+2]=w*h[2]+L*l[2]}},
t.cellBoundary=(r,n,a)=>{let s=n[0]-n[1],i=.5*(1-n[0])-n[1],o=2*n[0]+n[1]-1;return s>=0&&i>=0?(a[0]=e.pointsIds[0],a[1]=
e.pointsIds[1]):i<0&&o>=0?(a[0]=e.pointsIds[1],a[1]=e.pointsIds[2]):(a[0]=e.pointsIds[2],a[1]=e.pointsIds[0]),!(n[0]<0||
n[1]<0||n[0]>1||n[1]>1||1-n[0]-n[1]<0)},t.clip=(r,n,a,s,i,o,f,c,u,h)=>{let l=0;for(let M=0;M<3;M++){let v=n.getComponent(
M,0);(h&&v<=r||!h&&v>r)&&(l+=Rx[M])}let p=wx[l],x=[0,0,0],g=[0,0,0],y=[0,0,0],C=[0,0,0];for(let M=0;p[M]>-1;M+=3){C[0]=0,
C[1]=0,C[2]=0;for(let v=0;v<3;v++){let T=p[M+v];if(T>=100){let S=T-100;e.points.getPoint(S,x);let{inserted:d,id:R}=a.insertUniquePoint(
x);C[v]=R,d&&o.passData(i,e.pointsIds[S],R)}else{let S=Ex[T],d=S[0],R=S[1],w=n.getComponent(S[1],0)-n.getComponent(S[0],
0);w<=0&&(d=S[1],R=S[0],w=-w);let L=w===0?0:(r-n.getComponent(d,0))/w;e.points.getPoint(d,g),e.points.getPoint(R,y);for(let m=0;m<
3;m++)x[m]=g[m]+L*(y[m]-g[m]);let{inserted:O,id:D}=a.insertUniquePoint(x);C[v]=D,O&&o.interpolateData(i,e.pointsIds[d],e.
pointsIds[R],D,L)}}if(!(C[0]===C[1]||C[0]===C[2]||C[1]===C[2])){let v=s.insertNextCell(C);u.passData(f,c,v)}}}}var Dx={};
function wu(t,e,r={}){Object.assign(e,Dx,r),Ee.extend(t,e,r),Lx(t,e)}var _x=E.newInstance(wu,"vtkTriangle"),Ot={newInstance:_x,
extend:wu,...Ox};function Ou(){return{intersected:!1,subId:-1,x:[0,0,0],pCoords:[0,0,0],t:-1}}function mx(t,e){e.classHierarchy.push("vtk\
Quad"),t.getCellDimension=()=>2,t.getCellType=()=>K.VTK_QUAD,t.getNumberOfEdges=()=>4,t.getNumberOfFaces=()=>0,t.intersectWithLine=
(r,n,a,s,i)=>{let o={subId:0,t:Number.MAX_VALUE,intersect:0,betweenPoints:!1},f,c=e.points.getPoint(0,[]),u=e.points.getPoint(
1,[]),h=e.points.getPoint(2,[]),l=e.points.getPoint(3,[]),p=ge(c,h),x=ge(u,l);if(p===x){let d,R=0,w=0;for(let L=0;L<4;L++)
d=e.pointsIds[L],d>R&&(R=d,w=L);w===0||w===2?f=0:f=1}else p<x?f=0:f=1;let g=null;e.triangle?g=e.triangle.getPoints():(e.
triangle=Ot.newInstance(),g=ut.newInstance(),g.setNumberOfPoints(3),e.triangle.initialize(g));let y,C=Ou(),M,v=Ou(),T,S;
switch(f){case 0:g.setPoint(0,...c),g.setPoint(1,...u),g.setPoint(2,...h),y=e.triangle.intersectWithLine(r,n,a,C.x,C.pCoords),
g.setPoint(0,...h),g.setPoint(1,...l),g.setPoint(2,...c),M=e.triangle.intersectWithLine(r,n,a,v.x,v.pCoords),T=y.intersect&&
M.intersect?y.t<=M.t:y.intersect,S=y.intersect&&M.intersect?M.t<y.t:M.intersect,T?(o=y,s[0]=C.x[0],s[1]=C.x[1],s[2]=C.x[2],
i[0]=C.pCoords[0]+C.pCoords[1],i[1]=C.pCoords[1],i[2]=C.pCoords[2]):S&&(o=M,s[0]=v.x[0],s[1]=v.x[1],s[2]=v.x[2],i[0]=1-(v.
pCoords[0]+v.pCoords[1]),i[1]=1-v.pCoords[1],i[2]=v.pCoords[2]);break;case 1:g.setPoint(0,...c),g.setPoint(1,...u),g.setPoint(
2,...l),y=e.triangle.intersectWithLine(r,n,a,C.x,C.pCoords),g.setPoint(0,...h),g.setPoint(1,...l),g.setPoint(2,...u),M=e.
triangle.intersectWithLine(r,n,a,v.x,v.pCoords),T=y.intersect&&M.intersect?y.t<=M.t:y.intersect,S=y.intersect&&M.intersect?
M.t<y.t:M.intersect,T?(o=y,s[0]=C.x[0],s[1]=C.x[1],s[2]=C.x[2],i[0]=C.pCoords[0],i[1]=C.pCoords[1],i[2]=C.pCoords[2]):S&&
(o=M,s[0]=v.x[0],s[1]=v.x[1],s[2]=v.x[2],i[0]=1-v.pCoords[0],i[1]=1-v.pCoords[1],i[2]=v.pCoords[2]);break;default:break}
return o},t.interpolationFunctions=(r,n)=>{let a=1-r[0],s=1-r[1];n[0]=a*s,n[1]=r[0]*s,n[2]=r[0]*r[1],n[3]=a*r[1]},t.evaluateLocation=
(r,n,a)=>{let s=[];t.interpolationFunctions(r,a),n[0]=0,n[1]=0,n[2]=0;for(let i=0;i<4;i++){e.points.getPoint(i,s);for(let o=0;o<
3;o++)n[o]+=s[o]*a[i]}}}var Fx={};function Lu(t,e,r={}){Object.assign(e,Fx,r),Ee.extend(t,e,r),mx(t,e)}var Nx=E.newInstance(
Lu,"vtkQuad"),Du={newInstance:Nx,extend:Lu};var{vtkErrorMacro:_u}=E;function Vx(t){return()=>_u(`vtkTriangleStrip.${t} - NOT IMPLEMENTED`)}function Bx(t,e){if(!Array.
isArray(t)||t.length<3){_u("decomposeStrip - Invalid points array");return}let r=t[0],n=t[1];for(let a=0;a<t.length-2;a++){
let s=t[a+2];a%2?e.insertNextCell([n,r,s]):e.insertNextCell([r,n,s]),r=n,n=s}}var Ux={decomposeStrip:Bx};function Gx(t,e){
e.classHierarchy.push("vtkTriangleStrip");let r=t.initialize;t.initialize=(n,a)=>{e.triangle.initialize(n,a),r(n,a)},t.getCellType=
()=>K.VTK_TRIANGLE_STRIP,t.getCellDimension=()=>2,t.getNumberOfEdges=()=>e.pointsIds.length,t.getNumberOfFaces=()=>0,t.evaluatePosition=
(n,a,s,i,o)=>{let f=[0,0,0],c=Number.MAX_VALUE,u=0,h=[],l=[],p=[];s[2]=0,l[0]=0,l[1]=0,l[2]=0;let x=e.triangle.getPoints();
x.setNumberOfPoints(3);let g=e.triangle.getPointsIds().length;for(let y=0;y<g;y++)o[y]=0;for(let y=0;y<g-2;y++){let C=[];
x.getPoint(y,C);let M=[];x.getPoint(y+1,M);let v=[];x.getPoint(y+2,v),x.setData(Float32Array.from([...C,...M,...v]),3);let T=e.
triangle.evaluatePosition(n,p,f,h),S=T.dist2;T.evaluation>=0&&(S<c||S===c&&u===0)&&(u=T,a&&(a[0]=p[0],a[1]=p[1],a[2]=p[2]),
s[0]=f[0],s[1]=f[1],c=S,l[0]=h[0],l[1]=h[1],l[2]=h[2])}return i[0]=c,o[0]=l[0],o[1]=l[1],o[2]=l[2],u},t.evaluateLocation=
(n,a,s,i)=>{let o=[[0,1,2],[1,0,2]],f=n%2,c=e.pointsIds.length;for(let p=0;p<c;p++)i[p]=0;i[n]=1-a[0]-a[1],i[n+1]=a[0],i[n+
2]=a[1];let u=[];e.points.getPoint(n+o[f][0],u);let h=[];e.points.getPoint(n+o[f][1],h);let l=[];e.points.getPoint(n+o[f][2],
l);for(let p=0;p<3;p++)s[p]=u[p]*i[n]+h[p]*i[n+1]+l[p]*i[n+2]},t.cellBoundary=(n,a,s)=>{let i=[[0,1,2],[1,0,2]],o=n%2,f=e.
triangle.getPointsIds();return f[0]=e.pointsIds[i[o][0]],f[1]=e.pointsIds[i[o][1]],f[2]=e.pointsIds[i[o][2]],e.triangle.
cellBoundary(0,a,s)},t.getEdge=n=>{let a,s,i=e.pointsIds.length;return n===0?(a=0,s=1):n===i-1?(a=n-1,s=n):(a=n-1,s=n+1),
e.line.getPointsIds()[0]=e.pointsIds[a],e.line.getPointsIds()[1]=e.pointsIds[s],e.line.getPoints().setPoint(0,e.points.getPoint(
a)),e.line.getPoints().setPoint(1,e.points.getPoint(s)),e.line},t.intersectWithLine=(n,a,s,i,o)=>{let f=e.pointsIds.length-
2,c=e.triangle.getPoints();c.setNumberOfPoints(3);for(let u=0;u<f;u++){let h=[];e.points.getPoint(e.pointsIds[u],h);let l=[];
e.points.getPoint(e.pointsIds[u+1],l);let p=[];e.points.getPoint(e.pointsIds[u+2],p),c.setData(Float32Array.from([...h,...l,
...p]),3);let x=e.triangle.intersectWithLine(n,a,s,i,o);if(x.intersect)return x}return!1},t.triangulate=()=>{let n=e.points.
getNumberOfPoints()-2;e.tris=new Array(3*n);let a=[[0,1,2],[1,0,2]];for(let s=0;s<n;s++){let i=s%2;for(let o=0;o<3;o++)e.
tris[s*3+o]=s+a[i][o]}return!0},t.getPointArray=()=>e.tris,t.derivatives=(n,a,s,i,o)=>{let f=[];e.points.getPoint(n,f);let c=[];
e.points.getPoint(n+1,c);let u=[];e.points.getPoint(n+2,u);let h=e.triangle.getPoints();h.setPoint(0,...f),h.setPoint(1,
...c),h.setPoint(2,...u),e.triangle.derivatives(0,a,s,i,o)},t.getParametricCenter=n=>(n[0]=.333333,n[1]=.333333,n[2]=0,Math.
floor((e.pointsIds.length-2)/2)),t.contour=(n,a,s,i,o,f,c,u,h,l,p)=>Vx("contour")(),t.clip=(n,a,s,i,o,f,c,u,h,l)=>{let p=e.
points.getNumberOfPoints()-2,x=new Float32Array(3),g=a.newClone();g.setNumberOfComponents(a.getNumberOfComponents()),g.setData(
x,a.getNumberOfComponents());let y=e.triangle.getPoints();y.setNumberOfPoints(3);let C=e.triangle.getPointsIds(),M=[0,0,
0];for(let v=0;v<p;v++){let T=v,S=v+1,d=v+2;v%2&&(T=v+2,S=v+1,d=v),y.setPoint(0,...e.points.getPoint(T,M)),y.setPoint(1,
...e.points.getPoint(S,M)),y.setPoint(2,...e.points.getPoint(d,M)),C[0]=e.pointsIds[T],C[1]=e.pointsIds[S],C[2]=e.pointsIds[d],
x[0]=a.getComponent(T,0),x[1]=a.getComponent(S,0),x[2]=a.getComponent(d,0),e.triangle.clip(n,g,s,i,o,f,c,u,h,l)}}}var kx={
line:null,triangle:null,tris:null};function mu(t,e,r={}){Object.assign(e,kx,r),Ee.extend(t,e,r),e.line||(e.line=ne.newInstance()),
e.triangle||(e.triangle=Ot.newInstance()),Gx(t,e)}var zx=E.newInstance(mu,"vtkTriangleStrip"),Fu={newInstance:zx,extend:mu,
...Ux};var gt=["verts","lines","polys","strips"];var{vtkWarningMacro:Nu}=E,Hx={[K.VTK_LINE]:ne,[K.VTK_QUAD]:Du,[K.VTK_POLY_LINE]:ne,[K.VTK_TRIANGLE]:Ot,[K.VTK_TRIANGLE_STRIP]:Fu,
[K.VTK_POLY_LINE]:Tu,[K.VTK_POLYGON]:Eu};function Wx(t,e){e.classHierarchy.push("vtkPolyData");function r(o){return o.replace(
/(?:^\w|[A-Z]|\b\w)/g,f=>f.toUpperCase()).replace(/\s+/g,"")}function n(){e.cells=void 0,e.links=void 0}gt.forEach(o=>{t[`\
getNumberOf${r(o)}`]=()=>e[o].getNumberOfCells(),e[o]?e[o]=le(e[o]):e[o]=Jt.newInstance(),e[`_on${r(o)}Changed`]=n}),t.getNumberOfCells=
()=>gt.reduce((o,f)=>o+e[f].getNumberOfCells(),0);let a=t.shallowCopy;t.shallowCopy=(o,f=!1)=>{a(o,f),gt.forEach(c=>{e[c]=
Jt.newInstance(),e[c].shallowCopy(o.getReferenceByName(c))})};let s=t.getMTime;t.getMTime=()=>gt.reduce((o,f)=>Math.max(
o,e[f]?.getMTime()??o),s());let i=t.initialize;t.initialize=()=>(gt.forEach(o=>e[o]?.initialize()),n(),i()),t.buildCells=
()=>{let o=t.getNumberOfVerts(),f=t.getNumberOfLines(),c=t.getNumberOfPolys(),u=t.getNumberOfStrips(),h=o+f+c+u,l=new Uint8Array(
h),p=l,x=new Uint32Array(h),g=x;if(o){let y=0;e.verts.getCellSizes().forEach((C,M)=>{g[M]=y,p[M]=C>1?K.VTK_POLY_VERTEX:K.
VTK_VERTEX,y+=C+1}),g=g.subarray(o),p=p.subarray(o)}if(f){let y=0;e.lines.getCellSizes().forEach((C,M)=>{g[M]=y,p[M]=C>2?
K.VTK_POLY_LINE:K.VTK_LINE,C===1&&Nu("Building VTK_LINE ",M," with only one point, but VTK_LINE needs at least two point\
s. Check the input."),y+=C+1}),g=g.subarray(f),p=p.subarray(f)}if(c){let y=0;e.polys.getCellSizes().forEach((C,M)=>{switch(g[M]=
y,C){case 3:p[M]=K.VTK_TRIANGLE;break;case 4:p[M]=K.VTK_QUAD;break;default:p[M]=K.VTK_POLYGON;break}C<3&&Nu("Building VT\
K_TRIANGLE ",M," with less than three points, but VTK_TRIANGLE needs at least three points. Check the input."),y+=C+1}),
g+=g.subarray(c),p+=p.subarray(c)}if(u){let y=0;p.fill(K.VTK_TRIANGLE_STRIP,0,u),e.strips.getCellSizes().forEach((C,M)=>{
g[M]=y,y+=C+1})}e.cells=uu.newInstance(),e.cells.setCellTypes(h,l,x)},t.buildLinks=(o=0)=>{e.cells==null&&t.buildCells(),
e.links=fu.newInstance(),o>0?e.links.allocate(o):e.links.allocate(t.getPoints().getNumberOfPoints()),e.links.buildLinks(
t)},t.getCellType=o=>e.cells.getCellType(o),t.getCellPoints=o=>{let f=t.getCellType(o),c=null;switch(f){case K.VTK_VERTEX:case K.
VTK_POLY_VERTEX:c=e.verts;break;case K.VTK_LINE:case K.VTK_POLY_LINE:c=e.lines;break;case K.VTK_TRIANGLE:case K.VTK_QUAD:case K.
VTK_POLYGON:c=e.polys;break;case K.VTK_TRIANGLE_STRIP:c=e.strips;break;default:return c=null,{type:0,cellPointIds:null}}
let u=e.cells.getCellLocation(o);return{cellType:f,cellPointIds:c.getCell(u)}},t.getPointCells=o=>e.links.getCells(o),t.
getCellEdgeNeighbors=(o,f,c)=>{let u=e.links.getLink(f),h=e.links.getLink(c);return u.cells.filter(l=>l!==o&&h.cells.indexOf(
l)!==-1)},t.getCell=(o,f=null)=>{let c=t.getCellPoints(o),u=f||Hx[c.cellType].newInstance();return u.initialize(t.getPoints(),
c.cellPointIds),u},t.getMaxCellSize=()=>gt.reduce((o,f)=>Math.max(o,e[f]?.getMaxCellSize?.()??0),0)}var Ax={};function Vu(t,e,r={}){
Object.assign(e,Ax,r),pu.extend(t,e,r),E.get(t,e,["cells","links"]),E.setGet(t,e,["verts","lines","polys","strips"]),Wx(
t,e)}var jx=E.newInstance(Vu,"vtkPolyData"),Bu={newInstance:jx,extend:Vu};function Hu(){try{return document.createElement("canvas").getContext("webgl2")!==null}catch{return!1}}var Uu=[33,36,42],
Kx=[255,255,255],Gu=t=>[1,3,5].map(e=>parseInt(t.slice(e,e+2),16));function ku(t,e){let r=new Uint32Array(t.length/e*(e+
1));for(let n=0,a=0;n<t.length;n+=e){r[a++]=e;for(let s=0;s<e;++s)r[a++]=t[n+s]}return r}var $x={ambient:.5,diffuse:.5,specular:0},
zu={lighting:!1},tr=class{constructor(e,r){this.data=Bu.newInstance(),this.mapper=en.newInstance({interpolateScalarsBeforeMapping:!0,
useLookupTableScalarRange:!0}),this.mapper.setInputData(this.data),this.actor=nu.newInstance(),this.actor.setMapper(this.
mapper),this.actor.getProperty().set(r),e.addActor(this.actor)}setPoints(e){this.data.getPoints().setData(Float32Array.from(
e),3),this.actor.setVisibility(e.length>0)}setSurface(e,r){this.setPoints(e.points),this.data.getPolys().setData(ku(e.triangles,
3)),this.data.getPointData().setNormals(Y.newInstance({name:"normals",numberOfComponents:3,values:Float32Array.from(e.normals)})),
this.data.getPointData().setScalars(Y.newInstance({name:"value",numberOfComponents:1,values:Float32Array.from(e.values)})),
this.mapper.setLookupTable(r),this.data.modified()}setLines(e){this.setPoints(e),this.data.getLines().setData(ku(Uint32Array.
from({length:e.length/3},(r,n)=>n),2)),this.data.modified()}asLines(e){return this.mapper.setScalarVisibility(!1),this.mapper.
setResolveCoincidentTopologyToPolygonOffset(),this.mapper.setRelativeCoincidentTopologyLineOffsetParameters(-e,-2*e),this}},
Tn=class{constructor(e,r){this.colours=r,this.window=oc.newInstance(),this.renderer=bc.newInstance(),this.window.addRenderer(
this.renderer),this.view=jc.newInstance(),this.view.setContainer(e),this.window.addView(this.view),this.renderer.getActiveCamera().
setParallelProjection(!0),this.skin=new tr(this.renderer,$x),this.faces=new tr(this.renderer,zu);let n=(a,s,i)=>new tr(this.
renderer,{...zu,lineWidth:s,color:a.map(o=>o/255)}).asLines(i);this.edges=n(Uu,1.4,2),this.open=n(Uu,4,3),this.dashes=n(
Kx,2,5)}resize([e,r],n){this.view.setSize(Math.max(1,Math.round(e*n)),Math.max(1,Math.round(r*n)))}background([e,r,n]){this.
renderer.setBackground(e/255,r/255,n/255)}table(e){let r=this.colours.ramp.map(Gu),n=Gu(this.colours.above),a=Math.max(r.
length,Math.min(4096,Math.ceil(r.length*e.highest/e.top-1e-9)));for(;r.length<a;)r.push(n);let s=Pr.newInstance();return s.
setTable(Y.newInstance({numberOfComponents:4,values:Uint8Array.from(r.flatMap(i=>[...i,255]))})),s.setMappingRange(0,e.top*
a/this.colours.ramp.length),s}show({skin:e,faces:r,lines:n},a){let s=this.table(a);this.skin.setSurface(e,s),this.faces.
setSurface(r,s),this.edges.setLines(n.edges),this.open.setLines(n.open),this.dashes.setLines(n.dashes)}render(e,r){let{toward:n,
up:a}=e.axes(),s=this.renderer.getActiveCamera();s.setFocalPoint(...e.centre),s.setPosition(...e.centre.map((i,o)=>i+2*r*
n[o])),s.setViewUp(...a),s.setParallelScale(e.halfHeight),s.setClippingRange(r/100,4*r),this.window.render()}};function z(t,e={},...r){let n=document.createElement(t);for(let[a,s]of Object.entries(e))n.setAttribute(a,s);return n.append(
...r),n}function yn(t,e,r,n){let a=z("select",{name:`view3d-${t.toLowerCase()}`});return e.forEach((s,i)=>a.append(z("op\
tion",{value:i},s))),a.value=r,a.addEventListener("change",()=>n(Number(a.value))),z("label",{},z("span",{},t),a)}var Cn=[
{kind:"quarter",name:"a quarter taken out"},{kind:"half",name:"cut lengthwise"},{kind:"across",name:"cut across"},{kind:"\
whole",name:"not cut"}],xn=class{constructor(e,r){this.input=z("input",{type:"range",name:`view3d-${e.toLowerCase().replaceAll(
" ","-")}`}),this.told=z("span",{class:"view3d-amount"}),this.label=z("label",{},z("span",{},`${e}: `,this.told),this.input),
this.words=String,this.input.addEventListener("input",()=>{this.tell(),r(Number(this.input.value))})}set({min:e,max:r,step:n,
value:a,words:s}){Object.assign(this.input,{min:e,max:r,step:n}),this.input.value=a,this.words=s,this.input.disabled=e===
r,this.tell()}tell(){let e=this.words(Number(this.input.value));this.told.textContent=e,this.input.setAttribute("aria-va\
luetext",e)}};function Wu(t,e,r){let n=new xn("Place of the cut",r.place),a=new xn("Movement drawn",r.factor);return{box:z(
"div",{class:"view3d-choices"},yn("Scenario",t.scenarios.map(i=>`${i.name}: ${i.outcome}`),0,r.scenario),yn("Load",t.loads.
map(i=>`${i.name}: ${i.detail}`),0,r.load),yn("Shown",e.map(i=>i.name),0,r.quantity),yn("Section",Cn.map(i=>i.name),0,r.
cut),n.label,a.label),place:n,factor:a}}function Au(t){let e=z("div",{class:"view3d-buttons",role:"group","aria-label":"\
Move the view"});for(let[r,n]of t){let a=z("button",{type:"button"},r);a.addEventListener("click",n),e.append(a)}return e}var Lt=Math.PI/180,rr={around:17,above:30},Sn=89,Mn=class{constructor(){this.turn={...rr},this.centre=[0,0,0],this.halfHeight=
50,this.size=[1,1]}axes(){let e=this.turn.around*Lt,r=this.turn.above*Lt,n=[Math.sin(r),Math.cos(r)*Math.cos(e),Math.cos(
r)*Math.sin(e)],a=Math.hypot(n[1],n[2]),s=[0,-n[2]/a,n[1]/a],i=[n[1]*s[2]-n[2]*s[1],n[2]*s[0]-n[0]*s[2],n[0]*s[1]-n[1]*s[0]];
return{toward:n,right:s,up:i}}turnBy(e,r){this.turn.around=(this.turn.around+e+540)%360-180,this.turn.above=Math.max(-Sn,
Math.min(Sn,this.turn.above+r))}turnAround(e){let[r,n]=[rr.above*Lt,rr.around*Lt],a=Math.atan2(Math.cos(r)*Math.cos(n),Math.
sin(r)),s=Math.hypot(Math.sin(r),Math.cos(r)*Math.cos(n)),i=Math.asin(s*Math.cos(a+e)),o=Math.max(-Sn,Math.min(Sn,i/Lt));
this.turn={above:o,around:Math.atan2(Math.cos(r)*Math.sin(n),s*Math.sin(a+e))/Lt}}slideBy(e,r){let{right:n,up:a}=this.axes(),
s=this.mmPerPixel();this.centre=this.centre.map((i,o)=>i-s*(e*n[o]-r*a[o]))}zoomBy(e,r=[this.size[0]/2,this.size[1]/2]){
let n=this.mmPerPixel();this.halfHeight=Math.max(.2,Math.min(5e3,this.halfHeight/e));let{right:a,up:s}=this.axes(),i=n-this.
mmPerPixel(),o=(r[0]-this.size[0]/2)*i,f=(this.size[1]/2-r[1])*i;this.centre=this.centre.map((c,u)=>c+o*a[u]+f*s[u])}mmPerPixel(){
return 2*this.halfHeight/this.size[1]}project([e,r,n],a=this.axes()){let s=[e-this.centre[0],r-this.centre[1],n-this.centre[2]],
i=f=>s[0]*f[0]+s[1]*f[1]+s[2]*f[2],o=this.mmPerPixel();return[this.size[0]/2+i(a.right)/o,this.size[1]/2-i(a.up)/o,i(a.toward)]}fit(e,r,n){
let{right:a,up:s,toward:i}=this.axes();this.centre=[0,0,(e+r)/2];let o=Math.abs(a[2])*(r-e)+2*n*Math.hypot(a[0],a[1]),f=Math.
abs(s[2])*(r-e)+2*n*Math.hypot(s[0],s[1]),c=this.size[0]/this.size[1];return this.halfHeight=Math.max(f/2*1.35,o/2/c*1.06),
i}};function nr(t,e,r){if(t===null)return"no stress of its own, judged by its force";if(e===null)return`${Dt(t)} ${r}, no er\
ror bar`;let n=i=>-Math.floor(Math.log10(Math.max(i,1e-12))),a=Math.max(0,Math.min(n(e),n(t)+3,12)),s=Math.max(1,Math.ceil(
e*10**a-1e-9))/10**a;return`${t.toFixed(a)} \xB1 ${s.toFixed(a)} ${r}`}function Dt(t){if(t===0)return"0";let e=Math.max(
0,2-Math.floor(Math.log10(Math.abs(t))));return t.toFixed(Math.min(e,6))}function dn(t){return`${t.toFixed(1).replace("-",
"\u2212")} mm`}var Xx=[1,2,3,4,5,6,8,10];function ar(t){if(!(t>0))return 1;let e=10**Math.floor(Math.log10(t));return Xx.
find(r=>r*e>=t*(1-1e-9))*e}function ju(t){let e=[0];for(let r=1;r<=t;r*=10)for(let n of[1,2,5])n*r<=t&&e.push(n*r);return e}var is=5,Yx=160,En=class{constructor(e,r){this.colours=e,this.name=z("p",{class:"view3d-name"}),this.about=z("p",{class:"\
view3d-about"}),this.pointer=z("span",{class:"view3d-pointer",hidden:""}),this.strip=z("div",{class:"view3d-strip"},this.
pointer),this.strip.style.backgroundImage=`linear-gradient(to right, ${e.ramp.filter((s,i)=>i%5===0).join(", ")})`,this.
ticks=z("div",{class:"view3d-ticks"}),this.above=z("p",{class:"view3d-above"});let n=z("input",{type:"checkbox",name:"vi\
ew3d-own-range"});n.addEventListener("change",()=>r(n.checked));let a=z("label",{class:"view3d-own"},n," colours over th\
e range of this scenario alone");this.measure=z("span",{class:"view3d-measure"}),this.length=z("span"),this.box=z("div",
{class:"view3d-scale"},z("div",{class:"view3d-bar"},this.name,this.about,this.strip,this.ticks,this.above,a),z("div",{class:"\
view3d-rule"},this.measure,this.length))}set(e,r,n){this.range=r,this.name.textContent=`${e.name}, ${e.unit}`,this.about.
textContent=`${e.plain} ${n}`,this.ticks.replaceChildren();for(let a=0;a<=is;++a){let s=z("span",{},String(Number((r.top*
a/is).toPrecision(3))));s.style.left=`${100*a/is}%`,this.ticks.append(s)}if(this.above.replaceChildren(),r.highest>r.top*
1.0001){let a=z("span",{class:"view3d-sample","aria-hidden":"true"});a.style.background=this.colours.above,this.above.append(
a,` above ${Dt(r.top)}, up to ${Dt(r.highest)}`)}this.point(null)}point(e){this.pointer.hidden=e===null,e!==null&&(this.
pointer.style.left=`${100*Math.min(1,e/this.range.top)}%`)}setMeasure(e){let r=ar(Yx*e/2.01);this.measure.style.width=`${r/
e}px`,this.length.textContent=`${Number(r.toPrecision(2))} mm`}};function $u(t,e){let r=t.points,n={z:t.z,r:t.r,steady:new Float32Array(6*r),bent:new Float32Array(6*r),moved:new Float32Array(
3*r),bowed:new Float32Array(3*r),spread:new Float32Array(r)};for(let a of t.fields){if(!e.includes(a.load))continue;let[
s,i]=a.load==="bending"?[n.bent,n.bowed]:[n.steady,n.moved];a.stress.forEach((o,f)=>o.forEach((c,u)=>{s[6*u+f]+=c})),a.movement.
forEach((o,f)=>o.forEach((c,u)=>{i[3*u+f]+=c})),a.spread.forEach((o,f)=>{n.spread[f]+=o})}return n}function Xu(t,e,r,n){
let a=(s,i)=>{for(let o=0;o<i;++o)s.push(s[i*e+o]+n*(s[i*r+o]-s[i*e+o]))};for(let s of["z","r","spread"])a(t[s],1);for(let s of[
"steady","bent"])a(t[s],6);for(let s of["moved","bowed"])a(t[s],3);return t.z.length-1}function qx(t,e,r,n,a){for(let s=0;s<
6;++s)a[s]=t.steady[6*e+s]+(s===3||s===4?n:r)*t.bent[6*e+s];return a}function os(t,e,r,n,a){for(let s=0;s<3;++s)a[s]=t.moved[3*
e+s]+(s===1?n:r)*t.bowed[3*e+s];return a}function Zx([t,e,r,n,a,s]){return Math.sqrt(((t-e)**2+(e-r)**2+(r-t)**2)/2+3*(n*
n+a*a+s*s))}function Qx([t,e,r,n,a,s]){let i=(t+e+r)/3,o=t-i,f=e-i,c=r-i,u=(o*o+f*f+c*c)/2+n*n+a*a+s*s;if(u===0)return Math.
abs(i);let h=o*(f*c-a*a)-n*(n*c-a*s)+s*(n*a-f*s),l=Math.acos(Math.min(1,Math.max(-1,h/2*(3/u)**1.5)))/3,p=2*Math.sqrt(u/
3);return Math.max(Math.abs(i+p*Math.cos(l)),Math.abs(i+p*Math.cos(l+2*Math.PI/3)))}function Jx(t){return Math.hypot(t[3],
t[4])}var Rn=[{key:"von_mises",name:"von Mises stress",unit:"MPa",of:Zx,bound:Math.sqrt(1.5),plain:"One number for a mix\
ed stress, to be held against the strength of a tensile test."},{key:"principal",name:"Largest principal stress, by size",
unit:"MPa",of:Qx,bound:1,plain:"The strongest pull or push at a place, whichever way it points."},{key:"shear",name:"She\
ar stress around the axis",unit:"MPa",of:Jx,bound:Math.sqrt(.5),plain:"What carries the torque."},{key:"movement",name:"\
Movement, seen from the joint",unit:"mm",of:null,bound:0,plain:"How far a place moves when the joint is held still."}],Ku=new Float64Array(
6);function sr(t,e,r,n){let a=Math.cos(n),s=Math.sin(n);if(e.key==="movement"){let[i,o,f]=os(t,r,a,s,Ku);return Math.hypot(
i,o,f)}return e.of(qx(t,r,a,s,Ku))}function Ix(t){return!t.bent.some(e=>e!==0)}var Px=24;function Yu(t,e){let r=Ix(t)?1:
Px;return Float32Array.from(t.z,(n,a)=>{let s=0;for(let i=0;i<r;++i)s=Math.max(s,sr(t,e,a,2*Math.PI*i/r));return s})}var bx={ArrowLeft:[-1,0],ArrowRight:[1,0],ArrowUp:[0,-1],ArrowDown:[0,1]};function fs(){return 1.25}function qu(t,e){let r=new Map,
n=s=>{let i=t.getBoundingClientRect();return[s.clientX-i.left,s.clientY-i.top]},a=()=>{let[s,i]=[...r.values()];return{middle:[
(s[0]+i[0])/2,(s[1]+i[1])/2],apart:Math.max(20,Math.hypot(s[0]-i[0],s[1]-i[1]))}};t.addEventListener("pointerdown",s=>{s.
target.closest("a")||(t.focus({preventScroll:!0}),t.setPointerCapture(s.pointerId),r.set(s.pointerId,n(s)),e.point(n(s)))}),
t.addEventListener("pointermove",s=>{let i=n(s),o=r.get(s.pointerId);if(!o){e.point(i);return}if(r.size===2){let u=a();r.
set(s.pointerId,i);let h=a();e.slide(h.middle[0]-u.middle[0],h.middle[1]-u.middle[1]),e.zoom(h.apart/u.apart,h.middle);return}
r.set(s.pointerId,i);let f=i[0]-o[0],c=i[1]-o[1];s.shiftKey||s.buttons===2?e.slide(f,c):e.turn(-f*.4,c*.4)});for(let s of[
"pointerup","pointercancel"])t.addEventListener(s,i=>r.delete(i.pointerId));t.addEventListener("pointerleave",s=>{s.pointerType!==
"touch"&&e.leave()}),t.addEventListener("contextmenu",s=>s.preventDefault()),t.addEventListener("wheel",s=>{document.activeElement!==
t&&!s.ctrlKey||(s.preventDefault(),e.zoom(Math.exp(-s.deltaY*(s.deltaMode===1?.05:.0015)),n(s)))},{passive:!1}),t.addEventListener(
"keydown",s=>{if(s.ctrlKey||s.altKey||s.metaKey)return;let i=bx[s.key];if(i&&s.shiftKey)e.slide(-i[0]*40,-i[1]*40);else if(i)
e.turn(i[0]*5,-i[1]*5);else if(s.key==="+"||s.key==="=")e.zoom(1.25);else if(s.key==="-")e.zoom(1/1.25);else if(s.key===
"Home")e.home();else if(s.key==="Enter"||s.key===" ")e.read();else return;s.preventDefault()})}var eC="http://www.w3.org/2000/svg";function cs(t,e,r){let n=document.createElementNS(eC,t);for(let[a,s]of Object.entries(e))n.setAttribute(a,s);return r.append(
n),n}function tC(t,e){let r=[];for(let n of t.sort((a,s)=>a.x-s.x)){let a={chips:[n],wide:n.wide,wanted:n.x-n.wide/2},s=()=>{
a.left=Math.max(6,Math.min(e-6-a.wide,a.wanted))};for(s();r.length>0&&r.at(-1).left+r.at(-1).wide+4>a.left;){let i=r.pop(),
o=i.chips.length,f=a.chips.length,c=a.wanted-i.wide-4;a={chips:[...i.chips,...a.chips],wide:i.wide+4+a.wide,wanted:(o*i.
wanted+f*c)/(o+f)},s()}r.push(a)}for(let{chips:n,left:a}of r)n.reduce((s,i)=>(i.left=s,s+i.wide+4),a)}var rC=t=>t.reduce(
(e,r)=>e+r.offsetWidth+4,12),wn=class{constructor(e){this.overlay=e,this.lines=cs("svg",{"aria-hidden":"true",class:"vie\
w3d-lines"},e),this.chips=new Map}set(e){for(let r of this.chips.values())r.remove();this.chips.clear();for(let r of e){
let n=document.createElement(r.row?"a":"span");r.row&&n.setAttribute("href",`#${r.row}`),n.className=r.governs?"view3d-c\
hip governs":"view3d-chip",n.tabIndex=-1,n.setAttribute("aria-hidden","true"),n.dataset.site=r.id;let a=document.createElement(
"b"),s=document.createElement("span");a.textContent=r.number,s.textContent=` ${r.id}`,n.append(a,s),this.overlay.append(
n),this.chips.set(r.id,n)}}place(e,[r,n],a){this.lines.replaceChildren(),this.lines.setAttribute("viewBox",`0 0 ${r} ${n}`);
let s={upper:[],lower:[]};for(let[o,f]of this.chips){let c=e.get(o);f.hidden=!c,c&&s[c[1]<=a(c[0])?"upper":"lower"].push(
{chip:f,x:c[0],y:c[1]})}this.overlay.classList.remove("view3d-brief");let i=Object.values(s).some(o=>rC(o.map(({chip:f})=>f))>
r);this.overlay.classList.toggle("view3d-brief",i);for(let[o,f]of Object.entries(s)){for(let c of f)Object.assign(c,{wide:c.
chip.offsetWidth,high:c.chip.offsetHeight});tC(f,r);for(let c of f)this.draw(c,o==="upper",n)}}draw({chip:e,x:r,y:n,wide:a,
high:s,left:i},o,f){let c=o?6:f-6-s;e.style.transform=`translate(${i}px, ${c}px)`;let u=[Math.max(i+6,Math.min(i+a-6,r)),
o?c+s:c];for(let h of["halo","leader"])cs("line",{class:h,x1:u[0],y1:u[1],x2:r,y2:n},this.lines);cs("circle",{class:"spo\
t",cx:r,cy:n,r:4.5},this.lines)}};function Zu(t,e){let r=e.axes(),n=e.mmPerPixel();return t.map(a=>{let s=a.points.length/3,i=new Float32Array(3*s);for(let o=0;o<
s;++o){let f=a.points[3*o]-e.centre[0],c=a.points[3*o+1]-e.centre[1],u=a.points[3*o+2]-e.centre[2];i[3*o]=e.size[0]/2+(f*
r.right[0]+c*r.right[1]+u*r.right[2])/n,i[3*o+1]=e.size[1]/2-(f*r.up[0]+c*r.up[1]+u*r.up[2])/n,i[3*o+2]=f*r.toward[0]+c*
r.toward[1]+u*r.toward[2]}return{surface:a,screen:i}})}function ir(t,e,r){let n=null;for(let{surface:a,screen:s}of t){let i=a.
triangles;for(let o=0;o<i.length;o+=3){let f=3*i[o],c=3*i[o+1],u=3*i[o+2],h=s[f]-e,l=s[c]-e,p=s[u]-e;if(h>0&&l>0&&p>0||h<
0&&l<0&&p<0)continue;let x=s[f+1]-r,g=s[c+1]-r,y=s[u+1]-r,C=l*y-g*p,M=p*x-y*h,v=h*g-x*l;if(!(C>=0&&M>=0&&v>=0||C<=0&&M<=
0&&v<=0))continue;let T=C+M+v;if(T===0)continue;let S=(C*s[f+2]+M*s[c+2]+v*s[u+2])/T;n&&n.depth>=S||(n={surface:a,triangle:o/
3,corner:[i[o],i[o+1],i[o+2]],weight:[C/T,M/T,v/T],depth:S})}}return n}function Qu(t){let{surface:e,corner:r,weight:n}=t;
if(e.read)return e.read(r,n);let{fields:a}=e.section,s=i=>r.reduce((o,f,c)=>o+n[c]*i(f),0);return{value:s(i=>e.values[i]),
spread:Math.max(...r.map(i=>a.spread[e.at[i]])),z:s(i=>a.z[e.at[i]]),r:s(i=>a.r[e.at[i]]),theta:s(i=>e.theta[i])}}var Ke={outside:1,unfused:2,between:3},nC=.05,Ju=.004,aC=.8,Iu=[[0,1],[1,2],[0,2],[0,3],[1,3],[2,3]],sC=[[0,4,6,7],[4,1,
5,8],[6,5,2,9],[7,8,9,3],[4,9,5,6],[4,9,6,7],[4,9,7,8],[4,9,8,5]],iC=[[0,2,1,6,5,4],[0,1,3,4,8,7],[1,2,3,5,9,8],[0,3,2,7,
9,6]],oC=[[0,3,5],[3,1,4],[5,4,2],[3,4,5]],bu=(t,e)=>t[0]*e[0]+t[1]*e[1]+t[2]*e[2],or=(t,e)=>[t[0]-e[0],t[1]-e[1],t[2]-e[2]],
e0=(t,e)=>[t[1]*e[2]-t[2]*e[1],t[2]*e[0]-t[0]*e[2],t[0]*e[1]-t[1]*e[0]],Pu=(t,e,r)=>t.map((n,a)=>n+r*(e[a]-n)),_t=(t,e)=>[
t[3*e],t[3*e+1],t[3*e+2]];function t0(t){let e=Math.hypot(...t);return e>0?t.map(r=>r/e):[0,0,1]}function fC(t,e){let r=new Map;
return t.forEach((n,a)=>{r.has(n)||r.set(n,[]),r.get(n).push(e[Math.floor(a/3)])}),t.map((n,a)=>{let s=e[Math.floor(a/3)],
i=[0,0,0];for(let o of r.get(n))if(bu(o,s)>aC)for(let f=0;f<3;++f)i[f]+=o[f];return t0(i)})}function hs(t){if(t.body)return t.
body;let e=(o,f)=>o<f?65536*o+f:65536*f+o,r=new Map,n=t.corners;for(let o=0;o<t.middle.length/2;++o)r.set(e(t.middle[2*o],
t.middle[2*o+1]),n+o);let a=[],s=(o,f)=>(r.has(e(o,f))||(r.set(e(o,f),t.points+a.length),a.push([o,f])),r.get(e(o,f))),i={
added:a,tetrahedra:[],faces:{1:[],2:[],3:[]},edges:[]};for(let o=0;o<t.sides.length;++o){let f=[0,1,2,3].map(u=>t.element[4*
o+u]),c=Iu.some(([u,h])=>r.has(e(f[u],f[h])));if(c){for(let[u,h]of Iu)f.push(s(f[u],f[h]));for(let u of sC)i.tetrahedra.
push(...u.map(h=>f[h]))}else i.tetrahedra.push(...f);for(let u=0;u<4;++u){let h=i.faces[t.sides[o]>>2*u&3];if(!h)continue;
let l=iC[u].map(p=>f[p]);if(c)for(let p of oC)h.push(...p.map(x=>l[x]));else h.push(l[0],l[1],l[2])}}for(let o=0;o<t.edge.
length;o+=2){let f=t.edge[o],c=t.edge[o+1],u=r.get(e(f,c));u===void 0?i.edges.push(f,c):i.edges.push(f,u,u,c)}i.place=gs(
t.place,a,3),i.normals={};for(let o of[Ke.outside,Ke.unfused]){let f=i.faces[o],c=[];for(let u=0;u<f.length;u+=3){let[h,
l,p]=[0,1,2].map(x=>_t(i.place,f[u+x]));c.push(t0(e0(or(l,h),or(p,h))))}i.normals[o]=fC(f,c)}return t.body=i,i}function gs(t,e,r){
let n=new Float32Array(t.length+r*e.length);n.set(t);let a=t.length;for(let[s,i]of e)for(let o=0;o<r;++o)n[a++]=(n[r*s+o]+
n[r*i+o])/2;return n}function r0(t){return hs(t).faces[Ke.unfused].length>0}function fr(t,e,r){let n=t.loads[e];return r.
key!=="movement"?n[r.key]:Float32Array.from({length:t.points},(a,s)=>Math.hypot(..._t(n.moved,s)))}function n0(t){let{place:e,
faces:r,added:n}=hs(t),a=t.points,s=f=>f<a?f:n[f-a][0],i=[],o=r[Ke.outside];for(let f=0;f<o.length;f+=3){let[c,u,h]=[0,1,
2].map(l=>_t(e,o[f+l]));i.push({corner:[0,1,2].map(l=>s(o[f+l])),area:Math.hypot(...e0(or(u,c),or(h,c)))/2})}return i}function a0(t){
let{kind:e,place:r}=t,n=Math.cos(r+Ju),a=Math.sin(r+Ju),s={normal:[-a,n,0],offset:0},i={normal:[n,a,0],offset:0},o=f=>({
normal:f.normal.map(c=>-c),offset:-f.offset});if(e==="half")return{pieces:[[s]],planes:[{plane:s,within:[]}]};if(e==="qu\
arter")return{pieces:[[s],[o(s),i]],planes:[{plane:s,within:[o(i)]},{plane:i,within:[o(s)]}]};if(e==="across"){let f={normal:[
0,0,1],offset:r};return{pieces:[[f]],planes:[{plane:f,within:[]}]}}return{pieces:[[]],planes:[]}}var Ln=(t,e)=>bu(t.normal,
e)-t.offset;function s0(t,e,r=0){return a0(t).pieces.some(n=>n.every(a=>Ln(a,e)<=r))}function On(t,e,r){return{place:Pu(
t.place,e.place,r),moved:Pu(t.moved,e.moved,r),value:t.value+r*(e.value-t.value),normal:t.normal}}function us(t,e){for(let r of e){
let n=[];t.forEach((a,s)=>{let i=t[(s+1)%t.length],o=Ln(r,a.place),f=Ln(r,i.place);o<=0&&n.push(a),o<=0!=f<=0&&n.push(On(
a,i,o/(o-f)))}),t=n}return t}var Dn=class{constructor(){Object.assign(this,{points:[],normals:[],values:[],triangles:[],
places:[]})}add(e){let r=this.values.length;for(let{place:n,moved:a,value:s,normal:i}of e)this.points.push(...a),this.normals.
push(...i),this.values.push(s),this.places.push(...n);for(let n=2;n<e.length;++n)this.triangles.push(r,r+n-1,r+n)}read(e,r){
let n=o=>e.reduce((f,c,u)=>f+r[u]*o(c),0),[a,s,i]=[0,1,2].map(o=>n(f=>this.places[3*f+o]));return{value:n(o=>this.values[o]),
spread:null,z:i,r:Math.hypot(a,s),theta:Math.atan2(s,a)}}};function i0(t,e,r,n,a){let s=hs(t),{place:i,added:o}=s,f=gs(fr(
t,e,r),o,1),c=gs(t.loads[e].moved,o,3),{pieces:u,planes:h}=a0(n),l=(v,T)=>{let S=_t(i,v),d=_t(c,v);return{place:S,moved:S.
map((R,w)=>R+a*d[w]),value:f[v],normal:T}},p=new Dn,x=new Dn,g={edges:[],open:[],dashes:[]};for(let v of n.kind==="whole"?
[Ke.outside]:[Ke.outside,Ke.unfused]){let T=s.faces[v],S=s.normals[v];for(let d=0;d<T.length;d+=3){let R=[0,1,2].map(w=>l(
T[d+w],S[d+w]));for(let w of u)p.add(us(R,w))}}let y=(v,T,S)=>v.push(...T.moved,...S.moved),C=(v,T,S,d)=>{let R=us([T,S],
d);R.length>=2&&y(v,R[0],R[1])};for(let v=0;v<s.edges.length;v+=2)for(let T of u)C(g.edges,l(s.edges[v]),l(s.edges[v+1]),
T);let M=nC*t.r.reduce((v,T)=>Math.max(v,T),0);for(let{plane:v,within:T}of h){let S=Float64Array.from({length:i.length/3},
(w,L)=>Ln(v,_t(i,L))),d=(w,L)=>On(l(w,v.normal),l(L,v.normal),S[w]/(S[w]-S[L])),R=s.tetrahedra;for(let w=0;w<R.length;w+=
4){let L=[],O=[];for(let m=0;m<4;++m)(S[R[w+m]]>=0?L:O).push(R[w+m]);if(L.length===0||O.length===0)continue;let D=L.length===
2?[[L[0],O[0]],[L[0],O[1]],[L[1],O[1]],[L[1],O[0]]]:L.flatMap(m=>O.map(V=>[m,V]));x.add(us(D.map(([m,V])=>d(m,V)),T))}for(let w of Object.
values(Ke)){let L=s.faces[w];for(let O=0;O<L.length;O+=3){let D=[];for(let B=0;B<3;++B){let A=L[O+B],q=L[O+(B+1)%3];S[A]>=
0!=S[q]>=0&&D.push(d(A,q))}if(D.length!==2)continue;if(w!==Ke.unfused){C(g.edges,...D,T);continue}C(g.open,...D,T);let m=D.
map(({place:[B,A,q]})=>[q,Math.hypot(B,A),Math.hypot(B,A)*Math.atan2(A,B)]),V=m[0].map((B,A)=>Math.abs(m[1][A]-B));if(V[2]>
Math.PI*m[0][1])continue;let F=V.indexOf(Math.max(...V)),G=Math.max(1,Math.ceil(Math.hypot(...or(D[1].place,D[0].place))/
(M/4)));for(let B=0;B<G;++B)Math.floor((m[0][F]+(m[1][F]-m[0][F])*(B+.5)/G)/M)%2===0&&C(g.dashes,On(D[0],D[1],B/G),On(D[0],
D[1],(B+1)/G),T)}}}return{skin:p,faces:x,lines:g}}function ls(t,e){t.nearest??(t.nearest=new Map);let r=e.map(n=>n.toFixed(
3)).join();if(!t.nearest.has(r)){let n=0,a=1/0;for(let s=0;s<t.points;++s){let i=(t.place[3*s]-e[0])**2+(t.place[3*s+1]-
e[1])**2+(t.place[3*s+2]-e[2])**2;i<a&&([a,n]=[i,s])}t.nearest.set(r,{point:n,away:Math.sqrt(a)})}return t.nearest.get(r)}var cC=1/500,uC=.4;function gC(t){let{z:e,r,triangle:n}=t;return Array.from(t.part,(a,s)=>{let[i,o,f]=[0,1,2].map(c=>n[3*
s+c]);return{corner:[i,o,f],area:Math.abs((e[o]-e[i])*(r[f]-r[i])-(e[f]-e[i])*(r[o]-r[i]))/2}})}function o0(t,e){let r=[],
n=0,a=e.reduce((f,c)=>Math.max(f,c),0);for(let{corner:[f,c,u],area:h}of t)r.push([(e[f]+e[c]+e[u])/3,h]),n+=h;r.sort((f,c)=>c[0]-
f[0]);let s=0,i=a;for(let[f,c]of r)if(i=f,s+=c,s>n*cC)break;let o=ar(i);return{top:o<uC*a?o:ar(a),highest:a}}function f0(t,e,r,n){
let a=t.map(s=>s.solid?o0(n0(s),fr(s,e,n)):o0(gC(s),Yu(r(s),n)));return{top:Math.max(...a.map(s=>s.top)),highest:Math.max(
...a.map(s=>s.highest)),each:a}}var hC=5*Math.PI/180,lC=.05;function pC(t,e){let r={};for(let[o,f]of Object.entries(t.fields))r[o]=Array.from(f);let n=o=>r.
z[o]<=e,a=new Map,s=(o,f)=>{let c=o<f?`${o} ${f}`:`${f} ${o}`;return a.has(c)||(a.set(c,Xu(r,o,f,(e-r.z[o])/(r.z[f]-r.z[o]))),
r.z[a.get(c)]=e),a.get(c)},i={fields:r,triangle:[],part:[],skin:[],outline:[],unfused:[],across:[]};for(let o=0;o<t.part.
length;++o){let f=[0,1,2].map(h=>t.triangle[3*o+h]),c=[],u=[];for(let h=0;h<3;++h){let l=f[h],p=f[(h+1)%3];n(l)&&c.push(
l),n(l)!==n(p)&&(c.push(s(l,p)),u.push(c.at(-1)))}for(let h=2;h<c.length;++h)i.triangle.push(c[0],c[h-1],c[h]),i.part.push(
t.part[o]);u.length===2&&i.across.push(...u.sort((h,l)=>r.r[h]-r.r[l]))}for(let o of["skin","outline","unfused"])for(let f=0;f<
t[o].length;f+=2){let c=t[o][f],u=t[o][f+1];n(c)&&n(u)?i[o].push(c,u):n(c)?i[o].push(c,s(c,u)):n(u)&&i[o].push(s(c,u),u)}
return i}function c0(t,e,r){let n={fields:e,triangle:t.triangle,part:t.part,skin:t.skin,outline:t.outline,unfused:t.unfused,
across:[]};return r.kind==="across"?pC(n,r.place):n}function ht(t){return t.kind==="half"?{from:t.place+Math.PI,to:t.place+
2*Math.PI,faces:[t.place+Math.PI,t.place]}:t.kind==="quarter"?{from:t.place+Math.PI/2,to:t.place+2*Math.PI,faces:[t.place+
Math.PI/2,t.place]}:{from:0,to:2*Math.PI,faces:[]}}var vC=new Float64Array(3);function cr(t,e,r,n,{z:a,r:s}={z:t.z[e],r:t.
r[e]}){let i=Math.cos(r),o=Math.sin(r),[f,c,u]=os(t,e,i,o,vC),h=s+n*f;return[h*i-n*c*o,h*o+n*c*i,a+n*u]}var _n=class{constructor(e,r,n){
Object.assign(this,{section:e,quantity:r,factor:n}),this.points=[],this.normals=[],this.values=[],this.triangles=[],this.
at=[],this.theta=[]}add(e,r,n){return this.points.push(...cr(this.section.fields,e,r,this.factor)),this.normals.push(...n),
this.values.push(sr(this.section.fields,this.quantity,e,r)),this.at.push(e),this.theta.push(r),this.at.length-1}};function u0(t,e,{
from:r,to:n}){let a=Math.ceil((n-r)/hC-1e-9),{z:s,r:i}=t.section.fields;for(let o=0;o<e.length;o+=2){let f=e[o],c=e[o+1],
u=Math.hypot(s[c]-s[f],i[c]-i[f]);if(u<1e-9)continue;let h=-(s[c]-s[f])/u,l=(i[c]-i[f])/u,p=t.at.length;for(let x=0;x<=a;++x){
let g=r+(n-r)*x/a,y=[h*Math.cos(g),h*Math.sin(g),l];t.add(f,g,y),t.add(c,g,y)}for(let x=0;x<a;++x){let g=p+2*x;t.triangles.
push(g,g+1,g+2,g+1,g+3,g+2)}}}function g0(t,e,r,n){let a=new _n(t,e,r);return u0(a,t.skin,n),a}function h0(t,e,r,n){let a=new _n(
t,e,r);return u0(a,t.across,n),n.faces.forEach((s,i)=>{let o=i===0?-1:1,f=[-o*Math.sin(s),o*Math.cos(s),0],c=a.at.length;
for(let u=0;u<t.fields.z.length;++u)a.add(u,s,f);for(let u of t.triangle)a.triangles.push(c+u)}),a}function l0(t,e,{faces:r}){
let{z:n,r:a}=t.fields,s={edges:[],open:[],dashes:[]},i=lC*a.reduce((f,c)=>Math.max(f,c),0),o=(f,c,u,h)=>{let l=cr(t.fields,
f,h,e),p=cr(t.fields,c,h,e);return l.map((x,g)=>x+u*(p[g]-x))};for(let f of r){for(let c=0;c<t.outline.length;c+=2)s.edges.
push(...o(t.outline[c],t.outline[c+1],0,f),...o(t.outline[c],t.outline[c+1],1,f));for(let c=0;c<t.unfused.length;c+=2){let u=t.
unfused[c],h=t.unfused[c+1];s.open.push(...o(u,h,0,f),...o(u,h,1,f));let l=Math.hypot(n[h]-n[u],a[h]-a[u]),p=Math.abs(n[h]-
n[u])>=Math.abs(a[h]-a[u])?n:a,x=Math.max(1,Math.ceil(l/(i/4)));for(let g=0;g<x;++g){let y=p[u]+(p[h]-p[u])*(g+.5)/x;Math.
floor(y/i)%2===0&&s.dashes.push(...o(u,h,g/x,f),...o(u,h,(g+1)/x,f))}}}return s}var vs=.6,TC=.6,ps=2*Math.PI;function p0(t,{z:e,r}){let n=0,a=1/0;for(let s=0;s<t.z.length;++s){let i=(t.z[s]-e)**2+(t.r[s]-
r)**2;i<a&&([a,n]=[i,s])}return n}var v0=({z:t,r:e},r)=>[e*Math.cos(r),e*Math.sin(r),t];function T0(t,e,r,n,a,s){let i=t.
loads[e];if(r.key!=="movement"){let[f,c]=i[r.key]??[null,null];return{value:f,error:c}}let o=n.solid?fr(n,e,r)[ls(n,v0(i,
i.theta)).point]:sr(a,r,p0(a,i),i.theta);return{value:o,error:o*n.movement_error+s*n.share}}var yC=(t,{from:e,to:r})=>((t-
e)%ps+ps)%ps<=r-e+1e-9;function y0(t,e,r,n,a,s,i){let o=t.loads[e];if(n.kind==="across"&&o.z>n.place)return null;let f=ht(
n),{toward:c}=s.axes(),u=[...f.faces].reverse();for(let x of[o.theta,Math.atan2(c[1],c[0])])yC(x,f)&&u.push(x);let h=p0(
r.fields,o),[l,p]=s.size;for(let x of u){let[g,y,C]=s.project(cr(r.fields,h,x,a,o));if(g<0||y<0||g>l||y>p)continue;let M=ir(
i,g,y);if(!M||M.depth<=C+vs)return[g,y]}return null}function x0(t,e,r,n,a,s,i){let o=e.loads[r],{moved:f}=t.loads[r],[c,
u]=s.size;for(let h of[o.theta,...e.goes_round?ht(n).faces:[]]){let l=v0(o,h),{point:p,away:x}=ls(t,l);if(!s0(n,l,vs)||x>
TC)continue;let[g,y,C]=s.project(l.map((v,T)=>v+a*f[3*p+T]));if(g<0||y<0||g>c||y>u)continue;let M=ir(i,g,y);if(!M||M.depth<=
C+vs)return[g,y]}return null}function C0(t,e){let r=z("ol",{class:"view3d-sites"}),n=new Map;for(let a of t){let s=z("sp\
an",{class:"view3d-value","data-site":a.id}),i=a.row?z("a",{href:`#${a.row}`},a.id):z("span",{},a.id),o=z("button",{type:"\
button","aria-label":`Show ${a.id} in the view`},"show");o.addEventListener("click",()=>e(a.id)),r.append(z("li",a.governs?
{class:"governs",value:a.number}:{value:a.number},i," ",s," ",o)),n.set(a.id,s)}return{list:r,values:n}}function S0(t,e,r){
for(let[n,a]of t){let{value:s,error:i}=e.get(n);a.textContent=nr(s,i,r)}}var M0=1,xC=.5,CC=9,SC=6,MC=t=>(t*180/Math.PI+360)%360,mn=15,d0=50,dC="Drag, or use the arrow keys, to turn; two fingers\
, the right button or Shift to slide; pinch, wheel, + and \u2212 to zoom (click into the view first); Home for the start. Poi\
nt at the part, or press Enter, to read the value there.",Fn=class{constructor(e,r){this.data=e,this.colours={ramp:e.colours,
above:e.above},this.chosen={scenario:0,load:0,quantity:0,cut:{kind:Cn[0].kind,place:0},factor:0,ownRange:!1},this.camera=
new Mn,this.ranges=new Map,this.build(r),this.fillSites(),this.fillSliders(),this.reshape(),this.home()}build(e){this.stage=
z("div",{class:"view3d-stage",tabindex:"0",role:"application","aria-label":`View in three dimensions: ${this.data.title}`,
"aria-describedby":"view3d-how-to"});let r=z("div",{class:"view3d-canvas"}),n=z("div",{class:"view3d-overlay"});this.cross=
z("span",{class:"view3d-cross",hidden:""}),n.append(this.cross),this.stage.append(r,n),this.bar=new En(this.colours,i=>{
this.chosen.ownRange=i,this.reshape()}),this.told=z("output",{class:"view3d-told"}),this.sitesBox=z("div");let a=i=>o=>{
this.chosen[i]=o,this.changed(i)};this.controls=Wu(this.data,Rn,{scenario:a("scenario"),load:a("load"),quantity:a("quant\
ity"),cut:i=>this.setCut(Cn[i].kind),place:i=>{this.chosen.cut.place=i,this.reshape()},factor:i=>{this.chosen.factor=this.
factors[i],this.reshape()}});let s=Au([["Turn left",()=>this.turn(-mn,0)],["Turn right",()=>this.turn(mn,0)],["Turn up",
()=>this.turn(0,mn)],["Turn down",()=>this.turn(0,-mn)],["Nearer",()=>this.zoom(fs())],["Farther",()=>this.zoom(1/fs())],
["Start view",()=>this.home()],["Whole shaft",()=>this.lookAt(this.extent())]]);this.note=z("p",{class:"view3d-note"}),e.
append(this.controls.box,this.stage,this.told,this.bar.box,s,z("p",{class:"view3d-note",id:"view3d-how-to"},dC),this.sitesBox,
this.note),this.scene=new Tn(r,this.colours),this.labels=new wn(n),qu(this.stage,{turn:(i,o)=>this.turn(i,o),slide:(i,o)=>{
this.camera.slideBy(i,o),this.draw()},zoom:(i,o)=>this.zoom(i,o),home:()=>this.home(),point:i=>this.point(i),leave:()=>this.
tell(null),read:()=>this.point([this.camera.size[0]/2,this.camera.size[1]/2])}),new ResizeObserver(()=>this.draw()).observe(
this.stage),matchMedia("(prefers-color-scheme: dark)").addEventListener("change",()=>this.draw()),this.stage.addEventListener(
"webglcontextlost",()=>e.dispatchEvent(new Event("view3d-lost")),!0)}noteOnErrors(){let{share:e,solid:r}=this.scenario(),
n=this.hasUnjoined()?" Dashed lines are faces that are not joined; the rounds at their ends belong to the method and are\
 no holes of the part.":"";return r?`This is the solid model; stresses are the worst over a turn of the bending, the mov\
ement is that of bending towards 0\xB0. At a site the value and its error are those of the checks. Elsewhere there is no er\
ror bar: the view leaves out what a straight line misses halfway between its points, at most ${(100*e).toFixed(2)} % of \
the largest stress, and every second point of the mesh that was solved. At sharp ends of welds, holes and slits colours \
grow with the mesh and tell no stress.`+n:`At a site the value and its error are those of the checks, the worst around t\
he shaft. Elsewhere \xB1 is how far the finite elements that meet there disagree, with what the view leaves out between its\
 points (at most ${(100*e).toFixed(2)} % of the largest stress): no bound; in the examples it held at 98 of 100 places a\
gainst a much finer mesh. 0\xB0 is the side that bending pulls.`+n}hasUnjoined(){return this.data.scenarios.some(e=>e.solid?
r0(e):e.unfused.length>0)}scenario(){return this.data.scenarios[this.chosen.scenario]}quantity(){return Rn[this.chosen.quantity]}fieldsOf(e){
return $u(e,this.data.loads[this.chosen.load].on)}extent(){let{z:e,r}=this.scenario(),n=s=>s.reduce((i,o)=>Math.min(i,o)),
a=s=>s.reduce((i,o)=>Math.max(i,o));return{left:n(e),right:a(e),radius:a(r)}}range(){let e=`${this.chosen.load} ${this.chosen.
quantity}`;return this.ranges.has(e)||this.ranges.set(e,f0(this.data.scenarios,this.chosen.load,r=>this.fieldsOf(r),this.
quantity())),this.ranges.get(e)}largestMovement(){let{quantity:e}=this.chosen;this.chosen.quantity=Rn.findIndex(a=>a.key===
"movement");let{each:r,highest:n}=this.range();return this.chosen.quantity=e,{here:r[this.chosen.scenario].highest,highest:n}}fillSites(){
let e=this.scenario().sites;e.sort((s,i)=>s.number-i.number);for(let s of e)s.governs=s.id===this.data.governing;let{list:r,
values:n}=C0(e,s=>this.show(s));this.siteValues=n;let a=this.chosen.scenario===0?"":" of the sound splice";this.sitesBox.
replaceChildren(z("p",{class:"view3d-name"},`Sites in this scenario; each leads to its row among the checks${a}`),r),this.
labels.set(e),this.note.textContent=this.noteOnErrors()}fillSliders(){let{left:e,right:r,radius:n}=this.extent(),{kind:a,
place:s}=this.chosen.cut;a==="across"?this.controls.place.set({min:Math.ceil(e),max:Math.floor(r),step:.5,value:s,words:o=>`\
z = ${dn(o)}`}):a==="whole"?this.controls.place.set({min:0,max:0,step:1,value:0,words:()=>"no cut"}):this.controls.place.
set({min:-Math.PI,max:Math.PI,step:Math.PI/(this.scenario().solid?180:36),value:s,words:o=>`${Math.round(o*180/Math.PI)}\
\xB0`.replace("-","\u2212")}),this.factors=ju(xC*n/this.largestMovement().highest);let i=this.factors.filter(o=>o<=this.
chosen.factor).length-1;this.chosen.factor=this.factors[i],this.controls.factor.set({min:0,max:this.factors.length-1,step:1,
value:i,words:o=>o===0?"none":this.factors[o]===1?"true size":`${this.factors[o]} times`})}changed(e){e==="scenario"&&this.
fillSites(),e!=="quantity"&&this.fillSliders(),this.reshape()}setCut(e){this.chosen.cut={kind:e,place:0},this.fillSliders(),
e==="across"&&this.camera.turn.around<d0&&(this.camera.turn.around=d0),this.reshape()}reshape(){let{cut:e,factor:r}=this.
chosen,n=this.scenario(),a=this.quantity(),s=this.range(),i=s.each[this.chosen.scenario],o=this.chosen.ownRange?i:s,f=n.
solid?null:this.fieldsOf(n),c=n.solid?i0(n,this.chosen.load,a,e,r):this.swept(f);this.surfaces=[c.skin,c.faces],this.scene.
show(c,o);let u=this.largestMovement().here;this.siteTold=new Map(n.sites.map(x=>[x.id,T0(x,this.chosen.load,a,n,f,u)])),
S0(this.siteValues,this.siteTold,a.unit);let h=n.solid&&a.key!=="movement",l=Math.max(h?0:i.highest,...[...this.siteTold.
values()].map(x=>x.value)),p=this.data.loads[this.chosen.load];this.bar.set(a,o,`Scenario ${n.name}: ${n.outcome}. ${p.name}\
: ${p.detail}. Largest ${h?"at a site":"here"} ${Dt(l)} ${a.unit}.`),this.draw()}swept(e){let{cut:r,factor:n}=this.chosen,
a=this.quantity(),s=ht(r);return this.section=c0(this.scenario(),e,r),{skin:g0(this.section,a,n,s),faces:h0(this.section,
a,n,s),lines:l0(this.section,n,s)}}turn(e,r){this.camera.turnBy(e,r),this.draw()}zoom(e,r){this.camera.zoomBy(e,r),this.
draw()}home(){let{left:e,right:r,radius:n}=this.extent(),a=this.data.sleeve??[e,r];this.camera.turn={...rr},this.lookAt(
{left:Math.max(e,a[0]-M0*2*n),right:Math.min(r,a[1]+M0*2*n),radius:n})}lookAt({left:e,right:r,radius:n}){this.measureStage(),
this.camera.fit(e,r,n),this.draw()}show(e){let n=this.scenario().sites.find(s=>s.id===e).loads[this.chosen.load];this.chosen.
cut.kind==="across"&&n.z>this.chosen.cut.place&&(this.chosen.cut.place=n.z+1,this.fillSliders(),this.reshape()),this.scenario().
solid&&this.openAt(n.theta);let a=this.scenario().solid?n.theta:ht(this.chosen.cut).faces.at(-1)??n.theta;this.camera.centre=
[n.r*Math.cos(a),n.r*Math.sin(a),n.z],this.camera.halfHeight=SC,this.draw(),this.stage.focus({preventScroll:!0}),this.stage.
scrollIntoView({block:"nearest"}),this.frame(),this.tell({site:e})}openAt(e){if(ht(this.chosen.cut).faces.length>0){let r=Math.
PI/180;this.chosen.cut.place=Math.round(e/r)*r,this.fillSliders(),this.reshape()}this.camera.turnAround(e)}measureStage(){
this.camera.size=[Math.max(1,this.stage.clientWidth),Math.max(1,this.stage.clientHeight)]}draw(){this.waiting??(this.waiting=
requestAnimationFrame(()=>this.frame()))}frame(){cancelAnimationFrame(this.waiting),this.waiting=void 0,this.measureStage();
let{left:e,right:r,radius:n}=this.extent();this.scene.background(getComputedStyle(this.stage).backgroundColor.match(/\d+/g).
slice(0,3).map(Number)),this.scene.resize(this.camera.size,Math.min(2,devicePixelRatio)),this.scene.render(this.camera,r-
e+2*n+Math.hypot(...this.camera.centre)),this.views=Zu(this.surfaces,this.camera),this.spots=new Map;for(let f of this.scenario().
sites){let{load:c,cut:u,factor:h}=this.chosen,l=this.scenario().solid?x0(this.scenario(),f,c,u,h,this.camera,this.views):
y0(f,c,this.section,u,h,this.camera,this.views);l&&this.spots.set(f.id,l)}let[a,s]=this.camera.project([0,0,e]),[i,o]=this.
camera.project([0,0,r]);this.labels.place(this.spots,this.camera.size,f=>Math.abs(i-a)<1?this.camera.size[1]/2:s+(o-s)*(f-
a)/(i-a)),this.bar.setMeasure(this.camera.mmPerPixel()),this.tell(this.siteTold.has(this.toldSite)?{site:this.toldSite}:
null)}point(e){this.waiting!==void 0&&this.frame();for(let[n,a]of this.spots)if(Math.hypot(a[0]-e[0],a[1]-e[1])<CC)return this.
tell({site:n});let r=ir(this.views,...e);return this.tell(r?{hit:r,at:e}:null)}tell(e){let r=this.quantity(),n=this.scenario();
if(this.cross.hidden=!e?.at,this.toldSite=e?.site,!e){this.told.textContent="Point at the part to read the value there.",
this.bar.point(null);return}if(e.site){let{value:u,error:h}=this.siteTold.get(e.site);this.told.textContent=`${r.name} a\
t ${e.site}: ${nr(u,h,r.unit)}`,this.bar.point(u);return}this.cross.style.transform=`translate(${e.at[0]}px, ${e.at[1]}p\
x)`;let{value:a,spread:s,z:i,r:o,theta:f}=Qu(e.hit),c=r.key==="movement"?a*n.movement_error+this.largestMovement().here*
n.share:s===null?null:s*r.bound+n.missed;this.told.textContent=`${r.name}: ${nr(a,c,r.unit)} at z = ${dn(i)}, r = ${dn(o)}\
, ${Math.round(MC(f))%360}\xB0`,Object.assign(this.told.dataset,{value:a,z:i,r:o,theta:f}),this.bar.point(a)}};var EC="600px";function RC(t,e){for(let r of document.querySelectorAll("tr[data-id]")){let n=r.querySelector("th")?.textContent,
a=r.nextElementSibling?.querySelector("details");if(!a||!t.siteValues.has(n))continue;let s=z("button",{type:"button",class:"\
view3d-back"},`Show ${n} in the view`);s.addEventListener("click",()=>{e.scrollIntoView(),t.show(n)}),a.querySelector("s\
ummary").after(s)}}function wC(t,e){let r=z("div",{class:"view3d"});t.append(r),t.dataset.live="",r.addEventListener("vi\
ew3d-lost",()=>{delete t.dataset.live,r.remove()});let n=new Fn(e,r);RC(n,t)}var Nn=document.getElementById("view-3d"),E0=document.
getElementById("view-3d-data");if(Nn&&E0)if(Hu()){let t=new IntersectionObserver(e=>{e.some(r=>r.isIntersecting)&&(t.disconnect(),
wC(Nn,ys(E0.textContent)))},{rootMargin:EC});t.observe(Nn)}else Nn.append(z("p",{class:"view3d-note"},"This browser cann\
ot draw in three dimensions (no WebGL 2): the still picture above shows the same stresses."));})();
